import { squaredDistance } from './segment-distance.ts';

/** How many of the nearest walls a climb looks at. */
const LOOKED_AT = 6;

/** A wall as seen from a point: how far, and the unit direction away from it. */
interface Nearby {
  readonly d: number;
  readonly nx: number;
  readonly ny: number;
}

/**
 * A point further from the walls than (x, y), or null: the nearest walls are taken as straight lines, and the point
 * is where the least distance from these lines is greatest. Distances from segments are never less than those from
 * such lines, so where the walls are straight the answer is already the best point.
 *
 * @param walls flat segments; `near` the numbers of those to look at.
 */
export function climb(
  walls: Float64Array,
  near: readonly number[],
  x: number,
  y: number,
): { x: number; y: number } | null {
  const around = nearestWalls(walls, near, x, y);
  let best: { x: number; y: number } | null = null;
  let depth = around.length > 0 ? around[0].d : Infinity;
  for (let i = 0; i < around.length; i++)
    for (let k = i + 1; k < around.length; k++) {
      const pair = meetOpposite(around[i], around[k]);
      if (pair) ({ best, depth } = better(around, pair, best, depth));
      for (let m = k + 1; m < around.length; m++) {
        const three = meetThree(around[i], around[k], around[m]);
        if (three) ({ best, depth } = better(around, three, best, depth));
      }
    }
  return best && { x: x + best.x, y: y + best.y };
}

/** Keeps the step whose least distance from all the lines is greater. */
function better(
  around: readonly Nearby[],
  step: { x: number; y: number },
  best: { x: number; y: number } | null,
  depth: number,
) {
  let least = Infinity;
  for (const { d, nx, ny } of around) least = Math.min(least, d + nx * step.x + ny * step.y);
  return least > depth ? { best: step, depth: least } : { best, depth };
}

/** The step to half way between two parallel walls that face each other. */
function meetOpposite(a: Nearby, b: Nearby): { x: number; y: number } | null {
  if (a.nx * b.nx + a.ny * b.ny > -0.999999) return null;
  const by = (b.d - a.d) / 2;
  return { x: a.nx * by, y: a.ny * by };
}

/** The step to the point equally far from three lines. */
function meetThree(a: Nearby, b: Nearby, c: Nearby): { x: number; y: number } | null {
  const [ux, uy, u] = [b.nx - a.nx, b.ny - a.ny, a.d - b.d];
  const [vx, vy, v] = [c.nx - a.nx, c.ny - a.ny, a.d - c.d];
  const det = ux * vy - uy * vx;
  return Math.abs(det) < 1e-9 ? null : { x: (u * vy - v * uy) / det, y: (ux * v - vx * u) / det };
}

/** The nearest walls, the nearest first; of walls in the same direction only the nearest. */
function nearestWalls(walls: Float64Array, near: readonly number[], x: number, y: number): Nearby[] {
  const found: Nearby[] = [];
  let limit = Infinity;
  for (const wall of near) {
    const i = wall * 4;
    const square = squaredDistance(x, y, walls[i], walls[i + 1], walls[i + 2], walls[i + 3]);
    if (square >= limit || square === 0) continue;
    insert(found, seenFrom(walls, i, x, y));
    if (found.length === LOOKED_AT) limit = found[LOOKED_AT - 1].d ** 2;
  }
  return found;
}

function insert(found: Nearby[], wall: Nearby): void {
  const twin = found.findIndex((other) => other.nx * wall.nx + other.ny * wall.ny > 0.999999);
  if (twin >= 0) {
    if (found[twin].d <= wall.d) return;
    found.splice(twin, 1);
  }
  const place = found.findIndex((other) => other.d > wall.d);
  found.splice(place < 0 ? found.length : place, 0, wall);
  if (found.length > LOOKED_AT) found.pop();
}

function seenFrom(walls: Float64Array, i: number, x: number, y: number): Nearby {
  const ux = walls[i + 2] - walls[i];
  const uy = walls[i + 3] - walls[i + 1];
  const square = ux * ux + uy * uy;
  const f = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - walls[i]) * ux + (y - walls[i + 1]) * uy) / square));
  const dx = x - (walls[i] + f * ux);
  const dy = y - (walls[i + 1] + f * uy);
  const d = Math.hypot(dx, dy);
  return { d, nx: dx / d, ny: dy / d };
}
