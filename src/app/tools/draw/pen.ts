import { findCrossings } from '../../../geom/find-crossings.ts';
import type { Point } from '../../../geom/point.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import { type DrawingView, type PixelPoint, toDrawing, toPixels } from '../drawing-view.ts';
import { type Bowed, bulgeTowards } from './dragging-bulge.ts';

/** A press this near to the first vertex closes the outline, in pixels. */
const CLOSE_PX = 12;

/** Whether a press closes the pen's outline: at its first vertex, once there are three. */
export function closesPen(pen: readonly Vertex[], view: DrawingView, at: PixelPoint): boolean {
  if (pen.length < 3) return false;
  const { px, py } = toPixels(view, pen[0]);
  return Math.hypot(px - at.px, py - at.py) <= CLOSE_PX;
}

/**
 * The bulge of the edge that the pen has just drawn, by where the pressed pointer was dragged to: the edge bows as far as
 * the pointer stands off its chord.
 *
 * @param closing true for the edge back to the first vertex.
 * @returns null while there is no such edge.
 */
export function penBow(
  pen: readonly Vertex[],
  closing: boolean,
  view: DrawingView,
  at: PixelPoint,
  step: number | null,
): Bowed | null {
  const from = closing ? pen.at(-1) : pen.at(-2);
  const to = closing ? pen.at(0) : pen.at(-1);
  return from && to ? bulgeTowards(from, to, toDrawing(view, at), step, view.scale) : null;
}

/** One press of an arrow key moves the pen's cross by one step of the grid, ten with shift. */
export function crossStep(key: string, shift: boolean, step: number): Point | null {
  const far = shift ? 10 * step : step;
  if (key === 'ArrowLeft') return { x: -far, y: 0 };
  if (key === 'ArrowRight') return { x: far, y: 0 };
  if (key === 'ArrowUp') return { x: 0, y: far };
  return key === 'ArrowDown' ? { x: 0, y: -far } : null;
}

/**
 * Where the pen's line crosses itself: with the way to the next vertex, or closed where that is the first one.
 *
 * @param next where the next vertex would be; null where that is not known.
 */
export function penCrossings(pen: readonly Vertex[], next: Point | null, closing: boolean): Point[] {
  if (closing) return findCrossings(pen, true);
  const last = pen.at(-1);
  const goesOn = next && last && (next.x !== last.x || next.y !== last.y);
  return findCrossings(goesOn ? [...pen, next] : pen, false);
}
