import { type PixelPoint, panBy } from '../drawing-view.ts';
import type { GestureStep, Panning } from './gesture.ts';

/** The sheet follows the pointer from where it was taken. */
export function panTo(gesture: Panning, at: PixelPoint): GestureStep {
  return { gesture, view: panBy(gesture.view, at.px - gesture.from.px, at.py - gesture.from.py) };
}
