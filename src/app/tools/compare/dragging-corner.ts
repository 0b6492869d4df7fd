import type { Placement } from '../../../fit/fit.ts';
import { NM_PER_INCH, NM_PER_MM, type Point } from '../../../geom/point.ts';
import { type DrawingView, type PixelPoint, toDrawing, toPixels } from '../drawing-view.ts';
import { unplaced } from '../placed-points.ts';
import type { DraggingCorner, GestureStep } from './gesture.ts';

/** A dragged corner rests on whole steps in its own outline: a thousandth of a millimetre, a twentieth of a thou. */
const STEP = { mm: NM_PER_MM / 1000, in: NM_PER_INCH / 20_000 } as const;

/** Takes hold of a corner that stands at `corner` in the drawing; the hand keeps its distance from it. */
export function holdCorner(index: number, corner: Point, view: DrawingView, at: PixelPoint): DraggingCorner {
  const { px, py } = toPixels(view, corner);
  return { kind: 'dragging-corner', index, grip: { px: at.px - px, py: at.py - py } };
}

/**
 * The corner follows the pointer.
 *
 * @param stand where the outline stands: the blank's placement, or null for a keyway, which is drawn as it is.
 * @param units whose steps the corner rests on.
 * @returns where the corner is wanted in its own outline, whole nanometres.
 * @check tests/unit/app/compare-corners.test.ts
 */
export function dragCornerTo(
  gesture: DraggingCorner,
  at: PixelPoint,
  view: DrawingView,
  stand: Placement | null,
  units: keyof typeof STEP,
): GestureStep {
  const under = toDrawing(view, { px: at.px - gesture.grip.px, py: at.py - gesture.grip.py });
  const own = stand ? unplaced(under, stand) : under;
  const step = STEP[units];
  return { gesture, corner: { x: Math.round(own.x / step) * step, y: Math.round(own.y / step) * step } };
}
