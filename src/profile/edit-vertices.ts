import type { Point } from '../geom/point.ts';
import { type Vertex, vertexAt } from '../geom/vertex.ts';
import { changed, notChanged, type OutlineChange } from './outline-change.ts';

/** An outline with one vertex elsewhere; the bulges of its edges stay, so arcs grow and shrink with their chords. */
export function putVertex(vertices: readonly Vertex[], index: number, to: Point): Vertex[] {
  return vertices.with(index, vertexAt(to.x, to.y, vertices[index].bulge));
}

/** An outline with some vertices moved by whole nanometres. */
export function moveVertices(vertices: readonly Vertex[], chosen: readonly number[], by: Point): Vertex[] {
  const moved = new Set(chosen);
  return vertices.map((vertex, i) =>
    moved.has(i) ? vertexAt(vertex.x + Math.round(by.x), vertex.y + Math.round(by.y), vertex.bulge) : vertex,
  );
}

/**
 * An outline without some of its vertices. The edge that takes their place is straight.
 *
 * @returns a fault where fewer than three vertices would be left.
 * @check tests/unit/profile/edit-vertices.test.ts
 */
export function deleteVertices(vertices: readonly Vertex[], chosen: readonly number[]): OutlineChange {
  const gone = new Set(chosen);
  const left = vertices.length - gone.size;
  if (left < 3)
    return notChanged(
      `An outline needs at least three vertices, and ${['none', 'one', 'two'][left]} would be left`,
      'Choose fewer, or delete the whole section.',
    );
  const n = vertices.length;
  return changed(
    vertices.flatMap((vertex, i) => {
      if (gone.has(i)) return [];
      return gone.has((i + 1) % n) ? [vertexAt(vertex.x, vertex.y)] : [vertex];
    }),
  );
}
