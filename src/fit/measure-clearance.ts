import { boxOfCells, type ConvexCell, cellHolds, centroidOf } from '../geom/convex-cell.ts';
import { type Deepest, deepestPoint, depthAt, type Walls } from '../geom/deepest-point.ts';
import { outerWalls } from '../geom/outer-walls.ts';
import { groupCells } from './group-cells.ts';
import { limitSegments } from './limit-segments.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';

/** Greatest error of a clearance, nanometres. */
export const CLEARANCE_ACCURACY = 50;

/** Up to so many cells their boundary is found faster from the cells than from the outlines. */
const FEW_CELLS = 12;

/** The placement with the greatest gap, and the connected piece of the inner-fit region that it stands in. */
export interface BestPlacement extends Deepest {
  readonly home: readonly ConvexCell[];
}

/**
 * The placement with the greatest uniform gap all round, and that gap.
 *
 * A blank grown by a disk still fits exactly where the disk round t lies in the inner-fit region, because
 * erosions compose; so the clearance is the radius of the largest circle in that region. Where many placements are
 * equally good (a blank held between two walls), the middle of the piece is taken, which looks right. The boundary of
 * a region of few cells is taken from the cells, of many it is looked up among the limit segments.
 *
 * @param cells the inner-fit region; not empty.
 * @param accuracy greatest difference of `bound` and `depth`, nanometres.
 * @param equal a gap that is less by no more than this is equally good, nanometres.
 * @returns translation, gap (`depth`) and the certified upper bound of the gap (`bound`), nanometres.
 */
export function measureClearance(
  opening: Opening,
  blank: Blank,
  cells: readonly ConvexCell[],
  accuracy = CLEARANCE_ACCURACY,
  equal = 0.25,
): BestPlacement {
  const walls = cells.length <= FEW_CELLS ? outerWalls(cells) : wallsAround(opening, blank, cells, accuracy);
  const found = deepestPoint(cells, walls, accuracy);
  if (!found) throw new RangeError('measureClearance: the inner-fit region is empty');
  const home = homeOf(cells, found);
  const middle = centroidOf(home);
  if (!home.some((cell) => cellHolds(cell, middle.x, middle.y))) return { ...found, home };
  const depth = depthAt(walls, middle.x, middle.y);
  return depth >= found.depth - equal ? { ...middle, depth, bound: found.bound, home } : { ...found, home };
}

/** The boundary of a region of many cells: the limit segments as far as they can matter. */
function wallsAround(opening: Opening, blank: Blank, cells: readonly ConvexCell[], accuracy: number): Walls {
  const box = boxOfCells(cells);
  const reach = Math.min(box.maxX - box.minX, box.maxY - box.minY) / 2 + accuracy;
  const wide = { minX: box.minX - reach, minY: box.minY - reach, maxX: box.maxX + reach, maxY: box.maxY + reach };
  return limitSegments(opening, blank, wide);
}

/** The group of touching cells that holds the point. */
function homeOf(cells: readonly ConvexCell[], { x, y }: Deepest): readonly ConvexCell[] {
  if (cells.length === 1) return cells;
  const groups = groupCells(cells);
  return groups.find((group) => group.some((cell) => cellHolds(cell, x, y))) ?? groups[0];
}
