import type { Point } from '../../../geom/point.ts';
import { edgePoints, type Vertex } from '../../../geom/vertex.ts';

/** The line through some vertices with its arcs as chords, for drawing; closed ones do not give their first point again. */
export function flatLine(vertices: readonly Vertex[], closed: boolean): Point[] {
  const n = vertices.length;
  return vertices.flatMap((vertex, i) => (i < n - 1 || closed ? edgePoints(vertex, vertices[(i + 1) % n]) : [vertex]));
}
