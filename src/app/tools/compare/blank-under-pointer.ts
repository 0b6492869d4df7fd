import type { Placement } from '../../../fit/fit.ts';
import { boxOf, type Point } from '../../../geom/point.ts';
import { type DrawingView, type PixelPoint, toDrawing } from '../drawing-view.ts';
import { placed } from '../placed-points.ts';

/** Pixels beside the blank that still take hold of it: a blade may be only a few pixels thick. */
const SLACK_PX = 10;

/**
 * True when a press takes hold of the blank: inside its upright box or a little beside it. The box and not
 * the outline, so that a press in a groove does not slip off the blade.
 */
export function blankUnderPointer(
  blank: readonly Point[],
  placement: Placement,
  view: DrawingView,
  at: PixelPoint,
): boolean {
  const box = boxOf(placed(blank, placement));
  const p = toDrawing(view, at);
  const slack = SLACK_PX / view.scale;
  return p.x > box.minX - slack && p.x < box.maxX + slack && p.y > box.minY - slack && p.y < box.maxY + slack;
}
