import { type DrawingView, type PixelPoint, panBy } from '../drawing-view.ts';
import type { Panning } from './gesture.ts';

/** The sheet follows the pointer from where it was taken. */
export function panTo({ view, from }: Panning, at: PixelPoint): DrawingView {
  return panBy(view, at.px - from.px, at.py - from.py);
}
