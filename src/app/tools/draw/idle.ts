import type { Point } from '../../../geom/point.ts';
import { pointOnEdge } from '../../../geom/point-on-edge.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import { type DrawingView, type PixelPoint, toDrawing, toPixels } from '../drawing-view.ts';
import { type Gesture, IDLE, type Press } from './gesture.ts';
import type { UnderPointer } from './under-pointer.ts';

/** What a press begins, and which vertices are chosen then; null where the choice stays. */
export interface Begun {
  readonly gesture: Gesture;
  readonly chosen: readonly number[] | null;
}

/**
 * What a press begins: the sheet with space or the middle button; a vertex, an edge or the bow of an edge where it is
 * under the pointer; a box round vertices elsewhere. Shift adds to what is chosen, Alt bows an edge.
 *
 * @check tests/unit/app/draw-gestures.test.ts
 */
export function beginGesture(
  press: Press,
  under: UnderPointer,
  vertices: readonly Vertex[],
  chosen: readonly number[],
  view: DrawingView,
): Begun {
  const { at, button, spaceHeld, shift, alt } = press;
  if (button === 1 || (button === 0 && spaceHeld))
    return { gesture: { kind: 'panning', from: at, view }, chosen: null };
  if (button !== 0) return { gesture: IDLE, chosen: null };
  if (under.kind === 'vertex') return takeVertex(under.index, press, vertices, chosen, view);
  if (under.kind === 'nothing') {
    const corner = toDrawing(view, at);
    const kept = shift ? chosen : [];
    return { gesture: { kind: 'picking-box', from: at, moved: false, corner, to: corner, kept }, chosen: kept };
  }
  if (under.kind === 'bulge' || alt) return takeBow(under.edge, press, vertices, chosen, view);
  return takeEdge(under.edge, press, vertices, chosen, view);
}

function takeVertex(
  index: number,
  { at, shift }: Press,
  vertices: readonly Vertex[],
  chosen: readonly number[],
  view: DrawingView,
): Begun {
  const held = { kind: 'dragging-vertices', from: at, moved: false, lead: index } as const;
  const grip = gripOf(vertices[index], view, at);
  if (chosen.includes(index)) {
    // A drag moves all that are chosen, so that a click alone may say which are: it is known when the hand lets go.
    const click = shift ? chosen.filter((i) => i !== index) : [index];
    return { gesture: { ...held, grip, click }, chosen: null };
  }
  return { gesture: { ...held, grip, click: null }, chosen: shift ? [...chosen, index] : [index] };
}

function takeEdge(
  edge: number,
  { at, shift }: Press,
  vertices: readonly Vertex[],
  chosen: readonly number[],
  view: DrawingView,
): Begun {
  const ends = [edge, (edge + 1) % vertices.length];
  const grips = ends.map((i) => gripOf(vertices[i], view, at));
  const nearer = Math.hypot(grips[0].px, grips[0].py) <= Math.hypot(grips[1].px, grips[1].py) ? 0 : 1;
  return {
    gesture: { kind: 'dragging-edge', from: at, moved: false, edge, lead: ends[nearer], grip: grips[nearer] },
    chosen: shift ? [...chosen, ...ends] : ends,
  };
}

function takeBow(
  edge: number,
  { at, shift }: Press,
  vertices: readonly Vertex[],
  chosen: readonly number[],
  view: DrawingView,
): Begun {
  const ends = [edge, (edge + 1) % vertices.length];
  const middle = pointOnEdge(vertices[edge], vertices[ends[1]], 0.5);
  return {
    gesture: { kind: 'dragging-bulge', from: at, moved: false, edge, grip: gripOf(middle, view, at) },
    chosen: shift ? [...chosen, ...ends] : ends,
  };
}

function gripOf(point: Point, view: DrawingView, at: PixelPoint): PixelPoint {
  const { px, py } = toPixels(view, point);
  return { px: at.px - px, py: at.py - py };
}
