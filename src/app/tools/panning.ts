import { type DrawingView, type PixelPoint, panBy } from './drawing-view.ts';

/** The sheet is held: the view and the pixel at which it was taken. */
export interface Panning {
  readonly kind: 'panning';
  readonly from: PixelPoint;
  readonly view: DrawingView;
}

/** The sheet follows the pointer from where it was taken. */
export function panTo({ view, from }: Panning, at: PixelPoint): DrawingView {
  return panBy(view, at.px - from.px, at.py - from.py);
}
