import { deepestPoint, type Walls } from './deepest-point.ts';
import type { Point } from './point.ts';
import { boundariesOf, type Region } from './region.ts';
import { triangulate } from './triangulate.ts';

/** A circle; lengths in nanometres. */
export interface Circle {
  readonly centre: Point;
  readonly radius: number;
}

/**
 * A largest circle inside `region`, touching allowed.
 *
 * @param region with area.
 * @param accuracy the radius falls short of the greatest one by at most this, nanometres.
 * @check tests/outside, against closed forms and an independent library.
 */
export function inscribedCircle(region: Region, accuracy = 1): Circle {
  const found = deepestPoint(triangulate(region), wallsOf(region), accuracy);
  if (!found) throw new RangeError('inscribedCircle: the region has no area');
  return { centre: { x: found.x, y: found.y }, radius: found.depth };
}

/** The edges of a region as walls. */
export function wallsOf(region: Region): Walls {
  const walls: number[] = [];
  for (const ring of boundariesOf(region))
    ring.forEach((p, i) => {
      const q = ring[(i + 1) % ring.length];
      walls.push(p.x, p.y, q.x, q.y);
    });
  return Float64Array.from(walls);
}
