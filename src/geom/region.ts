import type { Point } from './point.ts';
import type { Ring } from './ring.ts';

/**
 * A part of the plane with area: an outer boundary less its holes. `outer` runs counter-clockwise, every
 * hole clockwise, so that the inside is always to the left of an edge. Holes lie inside `outer` and do
 * not overlap. Unlike a {@link Ring}, a hole is not a Ring (it runs the other way).
 */
export interface Patch {
  readonly outer: Ring;
  readonly holes: readonly (readonly Point[])[];
}

/** A set of patches that do not overlap; empty means no area. */
export type Region = readonly Patch[];

/** The region inside one ring. */
export function regionOf(ring: Ring): Region {
  return [{ outer: ring, holes: [] }];
}

/** Tells a region from a ring, for functions that take either. */
export function isRegion(shape: Ring | Region): shape is Region {
  return shape.length === 0 || 'outer' in shape[0];
}

/** Every boundary of the region, outer ones counter-clockwise and holes clockwise. */
export function boundariesOf(region: Region): (readonly Point[])[] {
  return region.flatMap((patch) => [patch.outer, ...patch.holes]);
}
