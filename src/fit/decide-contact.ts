import { sideOf } from '../geom/contains-point.ts';
import type { ConvexCell } from '../geom/convex-cell.ts';
import { boxOfCells } from '../geom/convex-cell.ts';
import type { Walls } from '../geom/deepest-point.ts';
import type { Box, Point } from '../geom/point.ts';
import { squaredDistance } from '../geom/segment-distance.ts';
import { containsBlank, pointOf, type RationalPoint } from './contain-exactly.ts';
import { limitSegments } from './limit-segments.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';

/** Placements further outside than this by doubles are not worth an exact look, nanometres. */
const ROUGH = 0.25;

/** Most placements that are looked at exactly. */
const MOST_EXACT = 400;

/**
 * The corners of an inner-fit region that has no area: the placements in which the blank goes in with contact
 * on both sides. A closed region without area consists of points and segments whose ends lie among the ends and
 * crossings of the limit segments; each is tested in exact arithmetic.
 *
 * @param cells the inner-fit region of the slightly grown opening: the contacts lie within it.
 * @returns exact corners; empty means that the blank is blocked, strictly.
 * @check tests/unit/fit/decide-contact.test.ts
 */
export function decideContact(opening: Opening, blank: Blank, cells: readonly ConvexCell[]): RationalPoint[] {
  const corners: RationalPoint[] = [];
  const seen = new Set<string>();
  let looked = 0;
  for (const cell of cells) {
    const box = widen(boxOfCells([cell]), 1);
    for (const t of candidates(limitSegments(opening, blank, box), box)) {
      const near = pointOf(t);
      const key = `${Math.round(near.x * 1e3)} ${Math.round(near.y * 1e3)}`;
      if (seen.has(key)) continue;
      seen.add(key);
      if (!roughlyInside(opening, blank, near)) continue;
      if (looked++ >= MOST_EXACT) return corners;
      if (containsBlank(opening.boundaries, blank.rings, t)) corners.push(t);
    }
  }
  return corners;
}

/** Ends and crossings of the segments that lie in the box. */
function* candidates(walls: Walls, box: Box): Generator<RationalPoint> {
  for (let i = 0; i < walls.length; i += 2) {
    if (isIn(box, walls[i], walls[i + 1])) yield { x: BigInt(walls[i]), y: BigInt(walls[i + 1]), d: 1n };
  }
  for (let i = 0; i < walls.length; i += 4)
    for (let k = i + 4; k < walls.length; k += 4) {
      const t = crossingOf(walls, i, k, box);
      if (t) yield t;
    }
}

/** The crossing of two segments, exactly, or null where they are parallel, apart or outside the box. */
function crossingOf(w: Walls, i: number, k: number, box: Box): RationalPoint | null {
  const [ux, uy] = [w[i + 2] - w[i], w[i + 3] - w[i + 1]];
  const [vx, vy] = [w[k + 2] - w[k], w[k + 3] - w[k + 1]];
  const d = ux * vy - uy * vx;
  if (d === 0) return null;
  const f = ((w[k] - w[i]) * vy - (w[k + 1] - w[i + 1]) * vx) / d;
  const g = ((w[k] - w[i]) * uy - (w[k + 1] - w[i + 1]) * ux) / d;
  if (f < -1e-6 || f > 1 + 1e-6 || g < -1e-6 || g > 1 + 1e-6) return null;
  if (!isIn(box, w[i] + f * ux, w[i + 1] + f * uy)) return null;
  return exactCrossing(w, i, k);
}

function exactCrossing(w: Walls, i: number, k: number): RationalPoint {
  const [ax, ay, bx, by] = [BigInt(w[i]), BigInt(w[i + 1]), BigInt(w[k]), BigInt(w[k + 1])];
  const [ux, uy] = [BigInt(w[i + 2]) - ax, BigInt(w[i + 3]) - ay];
  const [vx, vy] = [BigInt(w[k + 2]) - bx, BigInt(w[k + 3]) - by];
  const d = ux * vy - uy * vx;
  const n = (bx - ax) * vy - (by - ay) * vx;
  const sign = d < 0n ? -1n : 1n;
  return { x: sign * (ax * d + n * ux), y: sign * (ay * d + n * uy), d: sign * d };
}

/** By doubles: no blank corner clearly outside the opening, no ward tip clearly inside the blank. */
function roughlyInside(opening: Opening, blank: Blank, t: Point): boolean {
  const { convex } = blank;
  for (let k = 0; k < convex.length; k += 6) {
    const p = { x: convex[k] + t.x, y: convex[k + 1] + t.y };
    if (sideOf(opening.boundaries, p) === 'outside' && nearest(opening.index.edges, p) > ROUGH) return false;
  }
  const tips = opening.reflex();
  for (let k = 0; k < tips.length; k += 6) {
    const p = { x: tips[k] - t.x, y: tips[k + 1] - t.y };
    if (sideOf(blank.rings, p) === 'inside' && nearest(blank.edges, p) > ROUGH) return false;
  }
  return true;
}

function nearest(edges: Float64Array, p: Point): number {
  let least = Infinity;
  for (let i = 0; i < edges.length; i += 4)
    least = Math.min(least, squaredDistance(p.x, p.y, edges[i], edges[i + 1], edges[i + 2], edges[i + 3]));
  return Math.sqrt(least);
}

function widen(box: Box, by: number): Box {
  return { minX: box.minX - by, minY: box.minY - by, maxX: box.maxX + by, maxY: box.maxY + by };
}

function isIn(box: Box, x: number, y: number): boolean {
  return x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY;
}
