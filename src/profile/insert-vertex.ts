import { pointOnEdge } from '../geom/point-on-edge.ts';
import { arcOf, type Vertex, vertexAt } from '../geom/vertex.ts';

/**
 * An outline with one more vertex on an edge. An arc becomes two arcs of the same circle, so that the outline stays as
 * it was.
 *
 * @param edge number of the vertex that it starts from.
 * @param share how far along the edge: 0 its start, 1 its end.
 * @returns the outline, its new vertex numbered `edge + 1`.
 * @accuracy the new vertex is rounded to whole nanometres, the arcs follow it by as much.
 * @check tests/unit/profile/edit-vertices.test.ts, tests/laws/outline-operations.test.ts
 */
export function insertAt(vertices: readonly Vertex[], edge: number, share: number): Vertex[] {
  const from = vertices[edge];
  const to = vertices[(edge + 1) % vertices.length];
  const { x, y } = pointOnEdge(from, to, share);
  const sweep = arcOf(from, to)?.sweep ?? 0;
  const first = vertexAt(from.x, from.y, Math.tan((sweep * share) / 4));
  const second = vertexAt(Math.round(x) + 0, Math.round(y) + 0, Math.tan((sweep * (1 - share)) / 4));
  return vertices.toSpliced(edge, 1, first, second);
}
