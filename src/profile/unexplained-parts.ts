import { difference } from '../geom/clip.ts';
import type { Point } from '../geom/point.ts';
import { type Patch, regionOf } from '../geom/region.ts';
import type { Ring } from '../geom/ring.ts';
import { squaredDistance } from '../geom/segment-distance.ts';

/** A part of the plane that belongs to one of two outlines only; nanometres. */
export interface UnexplainedPart {
  readonly patch: Patch;
  /** Greatest distance of its boundary from the other outline. */
  readonly off: number;
  /** Where that is. */
  readonly at: Point;
  /** Whether the given outline covers it and the explained one does not. */
  readonly extra: boolean;
}

/**
 * Where two outlines differ by more than a tolerance: the parts that belong to one of them only, the greatest first.
 *
 * @check tests/unit/profile/read-grooves.test.ts
 */
export function unexplainedParts(given: Ring, explained: Ring, tolerance: number): UnexplainedPart[] {
  const [a, b] = [regionOf(given), regionOf(explained)];
  const extra = difference(a, b).map((patch) => partOf(patch, given, explained, true));
  const missing = difference(b, a).map((patch) => partOf(patch, given, explained, false));
  return [...extra, ...missing].filter(({ off }) => off > tolerance).sort((p, q) => q.off - p.off);
}

/** A boundary point of a part lies on one of the outlines; its distance from the other one is what counts. */
function partOf(patch: Patch, given: Ring, explained: Ring, extra: boolean): UnexplainedPart {
  const far = patch.outer.map((p) => Math.max(distanceFromOutline(given, p), distanceFromOutline(explained, p)));
  const off = Math.max(...far);
  return { patch, off, at: patch.outer[far.indexOf(off)], extra };
}

/** Least distance of a point from an outline, nanometres. */
export function distanceFromOutline(ring: readonly Point[], p: Point): number {
  let least = Infinity;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    least = Math.min(least, squaredDistance(p.x, p.y, ring[j].x, ring[j].y, ring[i].x, ring[i].y));
  }
  return Math.sqrt(least);
}
