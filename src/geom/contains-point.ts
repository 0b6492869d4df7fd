import type { Point } from './point.ts';
import { turn } from './predicates.ts';
import { boundariesOf, type Region } from './region.ts';

/** Where a point lies with respect to a closed set. */
export type Side = 'inside' | 'edge' | 'outside';

/** Where `p` lies with respect to the boundaries, by the parity of crossings of a ray to the right. Exact for whole numbers. */
export function sideOf(boundaries: readonly (readonly Point[])[], p: Point): Side {
  let inside = false;
  for (const ring of boundaries) {
    for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
      const a = ring[j];
      const b = ring[i];
      const side = turn(a, b, p);
      if (side === 0 && isBetween(a, b, p)) return 'edge';
      if (a.y > p.y !== b.y > p.y && side > 0 === b.y > a.y) inside = !inside;
    }
  }
  return inside ? 'inside' : 'outside';
}

/** Where `p` lies with respect to `region`. */
export function sideOfRegion(region: Region, p: Point): Side {
  return sideOf(boundariesOf(region), p);
}

/** For a point in line with a-b: whether it lies on the segment. */
function isBetween(a: Point, b: Point, p: Point): boolean {
  return (
    Math.min(a.x, b.x) <= p.x && p.x <= Math.max(a.x, b.x) && Math.min(a.y, b.y) <= p.y && p.y <= Math.max(a.y, b.y)
  );
}
