import type { Placement } from '../../../fit/fit.ts';
import type { Point } from '../../../geom/point.ts';
import type { DrawingView, PixelPoint } from '../drawing-view.ts';
import type { Panning } from '../panning.ts';

/** What the pointer is doing in Compare. Each state has a file of its own. */
export type Gesture = Idle | DraggingBlank | DraggingCorner | Panning;

/** Nothing is held. */
export interface Idle {
  readonly kind: 'idle';
}

/** The blank is held: `grip` is where it was taken, relative to its placement, in nanometres. */
export interface DraggingBlank {
  readonly kind: 'dragging-blank';
  readonly grip: Point;
}

/** A corner of an outline is held: `grip` is how far from it it was taken, in pixels. */
export interface DraggingCorner {
  readonly kind: 'dragging-corner';
  readonly index: number;
  readonly grip: PixelPoint;
}

/** A press of the pointer and what was under it. */
export interface Press {
  readonly at: PixelPoint;
  /** 0 main, 1 middle, 2 secondary, as pointer events count them. */
  readonly button: number;
  readonly spaceHeld: boolean;
  readonly onBlank: boolean;
}

/** What a gesture wants changed; absent parts stay as they are. */
export interface GestureStep {
  readonly gesture: Gesture;
  readonly placement?: Placement;
  readonly view?: DrawingView;
  /** Where the held corner is wanted, in the frame of its own outline, nanometres. */
  readonly corner?: Point;
}

export const IDLE: Idle = { kind: 'idle' };
