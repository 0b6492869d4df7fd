import type { Point } from './point.ts';
import { nearestOnSegment, squaredDistance } from './segment-distance.ts';

/** The place of a closed line that is furthest from another one, nanometres. */
export interface Furthest {
  readonly distance: number;
  /** Where it is, on the first line. */
  readonly at: Point;
  /** The place of the other line that is nearest to it. */
  readonly nearest: Point;
}

/** Bounds closer together than this are not parted further, nanometres. */
const CLOSE = 0.5;

/** A stretch of an edge from (px, py) to (qx, qy), and the edges of the other line that may be nearest somewhere on it. */
interface Stretch {
  readonly px: number;
  readonly py: number;
  readonly qx: number;
  readonly qy: number;
  readonly near: readonly number[];
}

/**
 * The directed Hausdorff distance of two closed lines: how far a place of the one is at most from the other. Lines, not
 * what they enclose: a small outline in the middle of a large one is far from it. In general not the same the other way
 * round, and not found at a vertex: it may lie where an edge is as far from two edges of the other line.
 *
 * @param from vertices in order, the first not repeated; nanometres.
 * @returns the distance, where it is, and what is nearest there.
 * @accuracy the distance is that of the place given, and at most 0.5 nm less than the largest.
 * @source F. Hausdorff, Grundzüge der Mengenlehre, 1914, for the distance of two sets (from memory). The bound: the
 *   distance from a segment is convex along an edge, so it is greatest at an end of any stretch, and the distance from
 *   the whole line is no greater than that from any of its segments.
 * @check tests/unit/geom/hausdorff.test.ts, tests/laws/hausdorff.test.ts, tests/outside/hausdorff.test.ts
 */
export function directedHausdorff(from: readonly Point[], to: readonly Point[]): Furthest {
  const edges = packEdges(to);
  const all = Array.from({ length: to.length }, (_, i) => i);
  let [most, x, y] = [-1, from[0].x, from[0].y];
  const see = (px: number, py: number, near: readonly number[]) => {
    const square = leastSquare(edges, px, py, near);
    if (square > most * most || most < 0) [most, x, y] = [Math.sqrt(square), px, py];
  };
  for (const p of from) see(p.x, p.y, all);
  for (const [i, p] of from.entries()) {
    const q = from[(i + 1) % from.length];
    const open: Stretch[] = [{ px: p.x, py: p.y, qx: q.x, qy: q.y, near: all }];
    for (let stretch = open.pop(); stretch; stretch = open.pop()) {
      const near = edgesStillNear(edges, stretch, most + CLOSE);
      if (!near) continue;
      const { px, py, qx, qy } = stretch;
      const [mx, my] = [(px + qx) / 2, (py + qy) / 2];
      see(mx, my, near);
      open.push({ px, py, qx: mx, qy: my, near }, { px: mx, py: my, qx, qy, near });
    }
  }
  const at = { x, y };
  return { distance: most, at, nearest: nearestOnLine(at, to) };
}

/** The Hausdorff distance of two closed lines, whose place it is, and what is nearest on the other. */
export interface Hausdorff extends Furthest {
  /** Which of the two lines has the place that is so far from the other. */
  readonly of: 'one' | 'other';
}

/**
 * The Hausdorff distance of two closed lines: the larger of the two directed ones. It is the same either way round, 0
 * only where the lines are the same, and never more than the way over a third line.
 *
 * @accuracy as {@link directedHausdorff}.
 * @check tests/laws/hausdorff.test.ts
 */
export function hausdorff(one: readonly Point[], other: readonly Point[]): Hausdorff {
  const there = directedHausdorff(one, other);
  const back = directedHausdorff(other, one);
  return there.distance >= back.distance ? { ...there, of: 'one' } : { ...back, of: 'other' };
}

/** ax, ay, bx, by of every edge of a closed line. */
function packEdges(line: readonly Point[]): Float64Array {
  const packed = new Float64Array(line.length * 4);
  for (const [i, a] of line.entries()) {
    const b = line[(i + 1) % line.length];
    packed.set([a.x, a.y, b.x, b.y], 4 * i);
  }
  return packed;
}

function squareTo(edges: Float64Array, i: number, x: number, y: number): number {
  const k = 4 * i;
  return squaredDistance(x, y, edges[k], edges[k + 1], edges[k + 2], edges[k + 3]);
}

function leastSquare(edges: Float64Array, x: number, y: number, near: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const i of near) least = Math.min(least, squareTo(edges, i, x, y));
  return least;
}

/** The edges that may be nearest somewhere on a stretch; null where no place of it is further off than `most`. */
function edgesStillNear(edges: Float64Array, stretch: Stretch, most: number): number[] | null {
  const { px, py, qx, qy, near } = stretch;
  const length = Math.hypot(qx - px, qy - py);
  const sums = new Float64Array(near.length);
  let upper = Number.POSITIVE_INFINITY;
  for (const [k, i] of near.entries()) {
    const p = Math.sqrt(squareTo(edges, i, px, py));
    const q = Math.sqrt(squareTo(edges, i, qx, qy));
    upper = Math.min(upper, Math.max(p, q));
    sums[k] = p + q;
  }
  if (upper <= most) return null;
  // On the stretch the distance from an edge is at least half of (p + q - length).
  return near.filter((_, k) => sums[k] - length <= 2 * upper);
}

function nearestOnLine(at: Point, line: readonly Point[]): Point {
  let least = Number.POSITIVE_INFINITY;
  let nearest = line[0];
  for (const [i, a] of line.entries()) {
    const point = nearestOnSegment(at, a, line[(i + 1) % line.length]);
    const square = (point.x - at.x) ** 2 + (point.y - at.y) ** 2;
    if (square < least) [least, nearest] = [square, point];
  }
  return nearest;
}
