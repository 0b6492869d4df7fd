import { intersection } from '../geom/clip.ts';
import { type Box, boxOf, type Point, translatePoints } from '../geom/point.ts';
import type { Region } from '../geom/region.ts';
import { regionArea } from '../geom/region-area.ts';
import { asTrustedRing } from '../geom/ring.ts';

/** A region, or null for the whole plane: what no region has cut yet. */
export type Shared = Region | null;

/** Area of the largest patch of a region, square nanometres; 0 for an empty one. */
export function largestArea(region: Region): number {
  return region.reduce((most, patch) => Math.max(most, regionArea([patch])), 0);
}

/** The region moved by whole nanometres. */
export function moveRegion(region: Region, by: Point): Region {
  if (by.x === 0 && by.y === 0) return region;
  return region.map(({ outer, holes }) => ({
    outer: asTrustedRing(translatePoints(outer, by)),
    holes: holes.map((hole) => translatePoints(hole, by)),
  }));
}

/** What the shared part and one more region have in common. */
export function share(shared: Shared, region: Region): Region {
  if (shared === null) return region;
  return shared.length === 0 || region.length === 0 ? [] : intersection(shared, region);
}

/** What both shared parts have in common; null where neither has been cut. */
export function shareBoth(a: Shared, b: Shared): Shared {
  return b === null ? a : share(a, b);
}

/** What all regions share where they were moved to. */
export function sharedBy(regions: readonly Region[], moves: readonly Point[]): Region {
  return regions.reduce<Shared>((shared, region, i) => share(shared, moveRegion(region, moves[i])), null) ?? [];
}

/** The box round a region with area. */
export function boxOfRegion(region: Region): Box {
  return boxOf(region.flatMap(({ outer }) => outer));
}
