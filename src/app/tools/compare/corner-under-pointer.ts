import type { Point } from '../../../geom/point.ts';
import { type DrawingView, type PixelPoint, toPixels } from '../drawing-view.ts';

/** A press this near to a corner takes it, in pixels. */
const REACH_PX = 14;

/**
 * The number of the corner that a press takes: the nearest one within reach, and the chosen one before others that
 * are hardly nearer. Null where no corner is near.
 *
 * @param corners where they stand in the drawing, nanometres.
 */
export function cornerUnderPointer(
  corners: readonly Point[],
  chosen: number,
  view: DrawingView,
  at: PixelPoint,
): number | null {
  let best: number | null = null;
  let least = REACH_PX;
  corners.forEach((corner, i) => {
    const { px, py } = toPixels(view, corner);
    const far = Math.hypot(px - at.px, py - at.py) - (i === chosen ? 4 : 0);
    if (far < least) [best, least] = [i, far];
  });
  return best;
}
