import type { Placement } from '../../../fit/fit.ts';
import { type DrawingView, toDrawing } from '../drawing-view.ts';
import { type Gesture, IDLE, type Press } from './gesture.ts';

/** What a press begins: the blank where it is under the pointer, the sheet elsewhere or with space or the middle button. */
export function beginGesture(press: Press, view: DrawingView, placement: Placement): Gesture {
  if (press.button === 1 || (press.button === 0 && (press.spaceHeld || !press.onBlank))) {
    return { kind: 'panning', from: press.at, view };
  }
  if (press.button !== 0) return IDLE;
  const at = toDrawing(view, press.at);
  return { kind: 'dragging-blank', grip: { x: at.x - placement.x, y: at.y - placement.y } };
}
