import { type DrawingView, type PixelPoint, panBy, wheelFactor, zoomAbout } from '../drawing-view.ts';

/** One event of a wheel, a pad or a pinch. */
export interface WheelTurn {
  readonly deltaX: number;
  readonly deltaY: number;
  /** 0 pixels, 1 lines, as wheel events count them. */
  readonly deltaMode: number;
  /** Browsers tell a pinch as a wheel with Ctrl. */
  readonly ctrl: boolean;
  readonly shift: boolean;
}

/** A notch of a mouse wheel is at least so many pixels; two fingers on a pad begin with fewer. */
const NOTCH = 40;

/** Whether an event comes from two fingers on a pad: sideways, or by small steps. */
export function isTwoFingers({ deltaX, deltaY, deltaMode, ctrl, shift }: WheelTurn): boolean {
  return !ctrl && !shift && deltaMode === 0 && (deltaX !== 0 || Math.abs(deltaY) < NOTCH);
}

/**
 * The view after a wheel event: a wheel or a pinch zooms about the pointer, two fingers move the sheet, and a wheel with
 * Shift moves it sideways.
 *
 * @param fingers whether two fingers are on their way; see {@link isTwoFingers}.
 */
export function wheelView(view: DrawingView, turn: WheelTurn, at: PixelPoint, fingers: boolean): DrawingView {
  if (turn.ctrl) return zoomAbout(view, at, wheelFactor(turn.deltaY * 4, turn.deltaMode));
  if (turn.shift) return panBy(view, -(turn.deltaX || turn.deltaY), 0);
  if (fingers) return panBy(view, -turn.deltaX, -turn.deltaY);
  return zoomAbout(view, at, wheelFactor(turn.deltaY, turn.deltaMode));
}
