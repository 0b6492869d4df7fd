import type { Point } from '../../src/geom/point.ts';

/** Distance of a point from a closed outline's edges. */
function distanceFrom(p: Point, outline: readonly Point[]): number {
  let nearest = Infinity;
  for (const [i, b] of outline.entries()) {
    const a = outline.at(i - 1) ?? b;
    const [ux, uy] = [b.x - a.x, b.y - a.y];
    const square = ux * ux + uy * uy;
    const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * ux + (p.y - a.y) * uy) / square));
    nearest = Math.min(nearest, Math.hypot(p.x - a.x - t * ux, p.y - a.y - t * uy));
  }
  return nearest;
}

/** Points along an outline, its vertices among them, at most `step` apart. */
function walk(outline: readonly Point[], step: number): Point[] {
  return outline.flatMap((b, i) => {
    const a = outline.at(i - 1) ?? b;
    const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / step));
    return Array.from({ length: count }, (_, k) => {
      const t = (k + 1) / count;
      return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
    });
  });
}

/** The Hausdorff distance of two outlines: how far a point of either is at most from the other; to about `step` / 2. */
export function outlineDistance(a: readonly Point[], b: readonly Point[], step = 5_000): number {
  let most = 0;
  for (const p of walk(a, step)) most = Math.max(most, distanceFrom(p, b));
  for (const p of walk(b, step)) most = Math.max(most, distanceFrom(p, a));
  return most;
}

/** An outline turned about the origin and moved. */
export function moved(outline: readonly Point[], dx: number, dy: number, turn: number): Point[] {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return outline.map(({ x, y }) => ({ x: c * x - s * y + dx, y: s * x + c * y + dy }));
}

/**
 * The least Hausdorff distance over moves and small turns: a coordinate search from where the middles of area meet. Where
 * it does not find the least it errs to the large side.
 */
export function alignedDistance(outline: readonly Point[], truth: readonly Point[]): number {
  const [a, b] = [middleOfArea(outline), middleOfArea(truth)];
  const own = moved(outline, -a.x, -a.y, 0);
  const goal = moved(truth, -b.x, -b.y, 0);
  const judge = ([dx, dy, turn]: readonly number[]) => outlineDistance(moved(own, dx, dy, turn), goal, 40_000);
  let best = [0, 0, 0];
  let value = judge(best);
  for (let size = [20_000, 20_000, 0.004]; size[0] > 300; ) {
    const tries = size.flatMap((step, i) => [best.with(i, best[i] + step), best.with(i, best[i] - step)]);
    const better = tries.map((at) => ({ at, value: judge(at) })).sort((p, q) => p.value - q.value)[0];
    if (better.value < value) ({ at: best, value } = better);
    else size = size.map((step) => step / 2);
  }
  return outlineDistance(moved(own, best[0], best[1], best[2]), goal, 5_000);
}

function middleOfArea(outline: readonly Point[]): Point {
  let [twice, x, y] = [0, 0, 0];
  for (const [i, b] of outline.entries()) {
    const a = outline.at(i - 1) ?? b;
    const cross = a.x * b.y - b.x * a.y;
    twice += cross;
    x += (a.x + b.x) * cross;
    y += (a.y + b.y) * cross;
  }
  return { x: x / (3 * twice), y: y / (3 * twice) };
}
