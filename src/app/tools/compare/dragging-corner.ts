import type { Placement } from '../../../fit/fit.ts';
import type { Point } from '../../../geom/point.ts';
import { type DrawingView, type PixelPoint, toDrawing, toPixels } from '../drawing-view.ts';
import { unplaced } from '../placed-points.ts';
import type { DraggingCorner, GestureStep } from './gesture.ts';

/** Takes hold of a corner that stands at `corner` in the drawing; the hand keeps its distance from it. */
export function holdCorner(index: number, corner: Point, view: DrawingView, at: PixelPoint): DraggingCorner {
  const { px, py } = toPixels(view, corner);
  return { kind: 'dragging-corner', index, grip: { px: at.px - px, py: at.py - py } };
}

/**
 * The corner follows the pointer.
 *
 * @param stand where the outline stands: the blank's placement, or null for a keyway, which is drawn as it is.
 * @returns where the corner is wanted in its own outline, whole nanometres.
 */
export function dragCornerTo(
  gesture: DraggingCorner,
  at: PixelPoint,
  view: DrawingView,
  stand: Placement | null,
): GestureStep {
  const under = toDrawing(view, { px: at.px - gesture.grip.px, py: at.py - gesture.grip.py });
  const own = stand ? unplaced(under, stand) : under;
  return { gesture, corner: { x: Math.round(own.x), y: Math.round(own.y) } };
}
