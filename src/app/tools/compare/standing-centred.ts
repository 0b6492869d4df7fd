import type { Placement } from '../../../fit/fit.ts';
import { boxOf, type Point } from '../../../geom/point.ts';
import type { Region } from '../../../geom/region.ts';

/**
 * Where a blank stands in a keyway that was cut for it: upright, in the middle sideways, and its back half of the spare
 * height above the floor; on the floor where it is too tall. What collides there shows its own depth, nothing
 * is shared out.
 *
 * @returns whole nanometres.
 * @check tests/unit/app/compare-standing.test.ts
 */
export function standCentred(opening: Region, blank: readonly (readonly Point[])[]): Placement {
  const around = boxOf(opening.flatMap(({ outer }) => outer));
  const own = boxOf(blank.flat());
  const spare = around.maxY - around.minY - (own.maxY - own.minY);
  return {
    x: Math.round((around.minX + around.maxX - own.minX - own.maxX) / 2),
    y: Math.round(around.minY - own.minY + Math.max(0, spare / 2)),
    tilt: 0,
  };
}
