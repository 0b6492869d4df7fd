import type { Point } from '../geom/point.ts';
import { boundariesOf, type Region } from '../geom/region.ts';
import { nearestOnSegment } from '../geom/segment-distance.ts';
import { climbOverlap, type Steps } from './climb-overlap.ts';
import { largestArea, moveRegion, type Shared, share, sharedBy } from './overlap-regions.ts';

/** Steps of a search for where regions are moved together, nanometres. */
const LEANING: Steps = { first: 20_000, least: 1_000 };

/** A wall of the shared part belongs to a region that is as near as this, nanometres. */
const ON_WALL = 50;

/** Walls that lean further than this from a direction (as a cosine) do not bound the shared part on that side. */
const FACING = 0.9;

/**
 * Moves all regions together that bound the shared part on one side: alone each of them would gain nothing.
 *
 * @param moves where the regions are; changed where that gains.
 * @returns the area of the largest shared part then, square nanometres.
 * @check tests/unit/passage/lean-together.test.ts
 */
export function leanTogether(regions: readonly Region[], moves: Point[]): number {
  let shared = sharedBy(regions, moves);
  for (const out of OUTWARDS) {
    const walls = facingMiddles(shared, out);
    const group = regions.map((region, i) => boundsAny(moveRegion(region, moves[i]), walls));
    const members = group.filter(Boolean).length;
    if (members < 2 || members === regions.length) continue;
    const part = (wanted: boolean) =>
      regions.reduce<Shared>((all, r, i) => (group[i] === wanted ? share(all, moveRegion(r, moves[i])) : all), null);
    const [still, moving] = [part(false) ?? [], part(true) ?? []];
    if (still.length === 0 || moving.length === 0) continue;
    const { at } = climbOverlap(still, moving, { x: 0, y: 0 }, LEANING);
    if (at.x === 0 && at.y === 0) continue;
    for (const [i, its] of group.entries()) if (its) moves[i] = { x: moves[i].x + at.x, y: moves[i].y + at.y };
    shared = sharedBy(regions, moves);
  }
  return largestArea(shared);
}

const OUTWARDS: readonly Point[] = [
  { x: -1, y: 0 },
  { x: 1, y: 0 },
  { x: 0, y: -1 },
  { x: 0, y: 1 },
];

/** The middles of the edges that look out to one side. */
function facingMiddles(region: Region, out: Point): Point[] {
  return boundariesOf(region).flatMap((boundary) =>
    boundary.flatMap((a, i) => {
      const b = boundary[(i + 1) % boundary.length];
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      const facing = ((b.y - a.y) * out.x - (b.x - a.x) * out.y) / length;
      return facing > FACING ? [{ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }] : [];
    }),
  );
}

function boundsAny(region: Region, places: readonly Point[]): boolean {
  return boundariesOf(region).some((boundary) =>
    boundary.some((a, i) => {
      const b = boundary[(i + 1) % boundary.length];
      return places.some((p) => {
        const near = nearestOnSegment(p, a, b);
        return Math.hypot(near.x - p.x, near.y - p.y) <= ON_WALL;
      });
    }),
  );
}
