import type { Point } from '../../../geom/point.ts';
import type { PixelPoint } from '../drawing-view.ts';
import type { Panning } from '../panning.ts';

/** What the pointer is doing on the sheet of the Draw view. Each state has a file of its own. */
export type Gesture = Idle | DraggingVertices | DraggingEdge | DraggingBulge | PickingBox | PressingPen | Panning;

/** Nothing is held. */
export interface Idle {
  readonly kind: 'idle';
}

/** What every held thing knows: where it was pressed, and whether the hand has gone on far enough to mean a drag. */
interface Held {
  readonly from: PixelPoint;
  readonly moved: boolean;
}

/** A vertex is held, and all chosen ones move with it: `grip` is how far from it it was taken, in pixels. */
export interface DraggingVertices extends Held {
  readonly kind: 'dragging-vertices';
  readonly lead: number;
  readonly grip: PixelPoint;
  /** What a click without a drag chooses; null where the press has chosen already. */
  readonly click: readonly number[] | null;
}

/** An edge is held by a place on it; `lead` is its nearer end, `grip` how far from that it was taken, in pixels. */
export interface DraggingEdge extends Held {
  readonly kind: 'dragging-edge';
  readonly edge: number;
  readonly lead: number;
  readonly grip: PixelPoint;
}

/** An edge is bowed: `grip` is how far from its middle it was taken, in pixels. */
export interface DraggingBulge extends Held {
  readonly kind: 'dragging-bulge';
  readonly edge: number;
  readonly grip: PixelPoint;
}

/** A box is drawn round vertices, in nanometres from one corner; `kept` were chosen before and stay so. */
export interface PickingBox extends Held {
  readonly kind: 'picking-box';
  readonly corner: Point;
  readonly to: Point;
  readonly kept: readonly number[];
}

/** The pen is pressed on the sheet: a drag bows the edge that it has just drawn, or the one that closes the outline. */
export interface PressingPen extends Held {
  readonly kind: 'pressing-pen';
  readonly closing: boolean;
}

/** A press of the pointer and the keys that were down with it. */
export interface Press {
  readonly at: PixelPoint;
  /** 0 main, 1 middle, 2 secondary, as pointer events count them. */
  readonly button: number;
  readonly spaceHeld: boolean;
  readonly shift: boolean;
  readonly alt: boolean;
}

export const IDLE: Idle = { kind: 'idle' };

/** The hand must go this far before a press is a drag, in pixels: a click moves nothing. */
const DRAG_PX = 3;

/** The gesture as it goes on at another pixel. */
export function goOn<G extends Held>(gesture: G, at: PixelPoint): G {
  if (gesture.moved) return gesture;
  const far = Math.hypot(at.px - gesture.from.px, at.py - gesture.from.py);
  return far > DRAG_PX ? { ...gesture, moved: true } : gesture;
}
