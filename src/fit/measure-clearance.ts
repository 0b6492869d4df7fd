import { boxOfCells, type ConvexCell } from '../geom/convex-cell.ts';
import { type Deepest, deepestPoint } from '../geom/deepest-point.ts';
import { limitSegments } from './limit-segments.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';

/** Greatest error of a clearance, nanometres. */
export const CLEARANCE_ACCURACY = 50;

/**
 * The placement with the greatest uniform gap all round, and that gap.
 *
 * A blank grown by a disk still fits exactly where the disk round t lies in the inner-fit region, because
 * erosions compose; so the clearance is the radius of the largest circle in that region.
 *
 * @param cells the inner-fit region; not empty.
 * @returns translation, gap (`depth`) and the certified upper bound of the gap (`bound`), nanometres.
 */
export function measureClearance(
  opening: Opening,
  blank: Blank,
  cells: readonly ConvexCell[],
  accuracy = CLEARANCE_ACCURACY,
): Deepest {
  const box = boxOfCells(cells);
  const reach = Math.min(box.maxX - box.minX, box.maxY - box.minY) / 2 + accuracy;
  const wide = { minX: box.minX - reach, minY: box.minY - reach, maxX: box.maxX + reach, maxY: box.maxY + reach };
  const found = deepestPoint(cells, limitSegments(opening, blank, wide), accuracy);
  if (!found) throw new RangeError('measureClearance: the inner-fit region is empty');
  return found;
}
