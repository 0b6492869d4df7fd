import type { Point } from '../../../geom/point.ts';
import { type PictureFrame, type PicturePoint, toPicturePlane, toProfilePlane } from '../../../trace/picture-scale.ts';
import { MARK_NAMES, type MarkName, type Told, type TraceStep } from '../../state/draw/underlay-state.ts';
import { type DrawingView, type PixelPoint, toDrawing, toPixels } from '../drawing-view.ts';

/** A mark on the sheet: its name, its place in the picture, and its pixel on the canvas. */
export interface PlacedMark {
  readonly name: MarkName;
  readonly at: PicturePoint;
  readonly pixel: PixelPoint;
}

/** A mark is taken within this many pixels. */
const REACH = 12;

/**
 * The marks of the open step where they stand on the sheet; one in hand stands where the hand holds it.
 *
 * @check tests/unit/app/placing-marks.test.ts
 */
export function placedMarks(
  { points }: Pick<Told, 'points'>,
  held: { readonly name: MarkName; readonly at: PicturePoint } | null,
  step: TraceStep | null,
  frame: PictureFrame,
  view: DrawingView,
): PlacedMark[] {
  const names: readonly MarkName[] = step === null || step === 'outline' ? [] : MARK_NAMES[step];
  return names.flatMap((name) => {
    const at = held?.name === name ? held.at : points[name];
    const place = at && toProfilePlane(frame, at);
    return at && place ? [{ name, at, pixel: toPixels(view, place) }] : [];
  });
}

/** The mark under a pixel: the nearest within reach; null for none. */
export function markUnder(marks: readonly PlacedMark[], { px, py }: PixelPoint): PlacedMark | null {
  let best: PlacedMark | null = null;
  let least = REACH;
  for (const mark of marks) {
    const off = Math.hypot(mark.pixel.px - px, mark.pixel.py - py);
    if (off <= least) [best, least] = [mark, off];
  }
  return best;
}

/** The place of the picture that lies under a pixel; null beyond the horizon of its perspective. */
export function pictureUnder(frame: PictureFrame, view: DrawingView, pixel: PixelPoint): PicturePoint | null {
  return toPicturePlane(frame, placeUnder(view, pixel));
}

/** The place among the profiles under a pixel. */
export function placeUnder(view: DrawingView, pixel: PixelPoint): Point {
  return toDrawing(view, pixel);
}
