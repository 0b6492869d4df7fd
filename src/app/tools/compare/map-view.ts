import type { InnerFit } from '../../../fit/inner-fit-region.ts';
import { type Box, boxOf, NM_PER_MM, type Point } from '../../../geom/point.ts';
import { type CanvasSize, type DrawingView, fitBox, type PixelPoint, toPixels } from '../drawing-view.ts';

/** Part of the map's side that stays free on each side of the region. */
const FREE = 0.17;
/** The least stretch that a map shows, nanometres: a contact has no size of its own. */
const LEAST = 0.004 * NM_PER_MM;
/** What is shown round the best placement where blank and keyway have no window at all. */
const AROUND = 0.6 * NM_PER_MM;

/**
 * The view of a square map of placements: the region fills it where there is one, else the window in which all
 * placements would lie. Where the blank lies now does not matter, so that the map stands still under the hand.
 *
 * @param side of the map in pixels.
 */
export function mapView({ cells, contacts, window }: InnerFit, best: Point, side: number): DrawingView {
  const region = cells.length > 0 ? cells.flatMap(pointsOf) : contacts;
  const shown = region.length > 0 ? region : [...(window ? pointsOf(window) : around(best)), best];
  const box = squareRound(boxOf(shown));
  const size: CanvasSize = { width: side, height: side };
  return fitBox(box, size, side * FREE);
}

/** The corners of a convex cell. */
export function pointsOf(cell: readonly number[]): Point[] {
  return cell.flatMap((x, i) => (i % 2 === 0 ? [{ x, y: cell[i + 1] }] : []));
}

function around({ x, y }: Point): Point[] {
  return [
    { x: x - AROUND, y: y - AROUND },
    { x: x + AROUND, y: y + AROUND },
  ];
}

function squareRound({ minX, minY, maxX, maxY }: Box): Box {
  const half = Math.max(maxX - minX, maxY - minY, LEAST) / 2;
  const x = (minX + maxX) / 2;
  const y = (minY + maxY) / 2;
  return { minX: x - half, minY: y - half, maxX: x + half, maxY: y + half };
}

/** Where a placement stands on the map; `off` tells that it lies beyond the edge and is held there. */
export interface MapMark extends PixelPoint {
  readonly off: boolean;
}

/** The mark of a placement, held `inset` pixels inside the edge of the map where it lies further out. */
export function markOf(view: DrawingView, placement: Point, side: number, inset: number): MapMark {
  const { px, py } = toPixels(view, placement);
  const hold = (v: number) => Math.min(side - inset, Math.max(inset, v));
  return { px: hold(px), py: hold(py), off: hold(px) !== px || hold(py) !== py };
}
