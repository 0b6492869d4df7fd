import type { Point } from '../../../geom/point.ts';
import { partOfEdge, pointOnEdge } from '../../../geom/point-on-edge.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import { type DrawingView, type PixelPoint, toDrawing, toPixels } from '../drawing-view.ts';

/** What of an outline is under the pointer. */
export type UnderPointer =
  | { readonly kind: 'vertex'; readonly index: number }
  | { readonly kind: 'bulge'; readonly edge: number }
  | { readonly kind: 'edge'; readonly edge: number; readonly part: number; readonly at: Point }
  | { readonly kind: 'nothing' };

/** How near a press must be to take a vertex, the handle in the middle of an edge, an edge; in pixels. */
const REACH_PX = { vertex: 12, bulge: 9, edge: 7 } as const;

/** Edges shorter than this on the screen, in pixels, have no handle in their middle: their ends need the room. */
export const HANDLE_ROOM_PX = 44;

/**
 * What a press takes: a vertex before the handle in the middle of an edge, that before the edge. Of vertices near to
 * each other the nearest is taken, a chosen one before one that is hardly nearer.
 *
 * @check tests/unit/app/draw-gestures.test.ts
 */
export function underPointer(
  vertices: readonly Vertex[],
  chosen: readonly number[],
  view: DrawingView,
  at: PixelPoint,
): UnderPointer {
  const index = vertexUnder(vertices, chosen, view, at);
  if (index !== null) return { kind: 'vertex', index };
  const nearest = edgeUnder(vertices, view, at);
  if (!nearest) return { kind: 'nothing' };
  return isOnHandle(vertices, nearest.edge, view, at) ? { kind: 'bulge', edge: nearest.edge } : nearest;
}

/** The number of the vertex within reach of the pointer; null where none is. */
function vertexUnder(
  vertices: readonly Point[],
  chosen: readonly number[],
  view: DrawingView,
  at: PixelPoint,
): number | null {
  const preferred = new Set(chosen);
  let best: number | null = null;
  let least: number = REACH_PX.vertex;
  vertices.forEach((vertex, i) => {
    const far = farOf(toPixels(view, vertex), at) - (preferred.has(i) ? 3 : 0);
    if (far < least) [best, least] = [i, far];
  });
  return best;
}

/** Where the handle in the middle of an edge stands; null where the edge is too short on the screen for one. */
export function handleOf(vertices: readonly Vertex[], edge: number, view: DrawingView): PixelPoint | null {
  const from = vertices[edge];
  const to = vertices[(edge + 1) % vertices.length];
  const chord = Math.hypot(to.x - from.x, to.y - from.y) * view.scale;
  const bow = (chord * Math.abs(from.bulge ?? 0)) / 2;
  if (Math.max(chord, 2 * bow) < HANDLE_ROOM_PX) return null;
  return toPixels(view, pointOnEdge(from, to, 0.5));
}

function isOnHandle(vertices: readonly Vertex[], edge: number, view: DrawingView, at: PixelPoint): boolean {
  const handle = handleOf(vertices, edge, view);
  return handle !== null && farOf(handle, at) <= REACH_PX.bulge;
}

function edgeUnder(vertices: readonly Vertex[], view: DrawingView, pixel: PixelPoint) {
  const point = toDrawing(view, pixel);
  let best: Extract<UnderPointer, { kind: 'edge' }> | null = null;
  // A handle stands on its edge, and is taken from a little further off than the edge itself.
  let least: number = REACH_PX.bulge;
  vertices.forEach((from, edge) => {
    const to = vertices[(edge + 1) % vertices.length];
    const part = partOfEdge(from, to, point);
    const at = pointOnEdge(from, to, part);
    const far = farOf(toPixels(view, at), pixel);
    if (far >= least || (far > REACH_PX.edge && !isOnHandle(vertices, edge, view, pixel))) return;
    best = { kind: 'edge', edge, part, at };
    least = far;
  });
  return best as Extract<UnderPointer, { kind: 'edge' }> | null;
}

function farOf(a: PixelPoint, b: PixelPoint): number {
  return Math.hypot(a.px - b.px, a.py - b.py);
}
