import { type Vertex, vertexAt } from '../geom/vertex.ts';

/** An outline with another bulge for one edge; 0 makes it straight. */
export function setBulge(vertices: readonly Vertex[], edge: number, bulge: number): Vertex[] {
  const { x, y } = vertices[edge];
  return vertices.with(edge, vertexAt(x, y, bulge));
}

/** An outline with some of its edges made straight. */
export function straighten(vertices: readonly Vertex[], edges: readonly number[]): Vertex[] {
  return edges.reduce<readonly Vertex[]>((now, edge) => setBulge(now, edge, 0), vertices).slice();
}
