import type { Point } from '../geom/point.ts';
import { type Vertex, vertexAt } from '../geom/vertex.ts';
import { changed, notChanged, type OutlineChange } from './outline-change.ts';

/** How a length in nanometres is written for the reader. */
type SayLength = (nm: number) => string;

/**
 * An outline with one corner rounded: the vertex becomes two, and between them runs the arc that is tangent to both edges.
 *
 * @param index of a vertex between two straight edges.
 * @param radius nanometres.
 * @param say how lengths are written in a fault.
 * @accuracy the two vertices are rounded to whole nanometres.
 * @source an arc of radius r tangent to two edges that turn by d starts r tan(d/2) from the corner (plane geometry).
 * @check tests/unit/profile/edit-vertices.test.ts
 */
export function roundVertex(vertices: readonly Vertex[], index: number, radius: number, say: SayLength): OutlineChange {
  const n = vertices.length;
  const before = vertices[(index + n - 1) % n];
  const at = vertices[index];
  const after = vertices[(index + 1) % n];
  if (before.bulge || at.bulge)
    return notChanged('Only a vertex between two straight edges can be rounded', 'Make its edges straight first.');
  if (!(radius > 0)) return notChanged('The radius must be more than 0', 'Give the radius of the rounding.');
  const [into, outOf] = [unit(before, at), unit(at, after)];
  const turn = Math.atan2(into.x * outOf.y - into.y * outOf.x, into.x * outOf.x + into.y * outOf.y);
  if (Math.abs(turn) < 1e-9) return notChanged('There is no corner: its edges are in line', 'Choose another vertex.');
  const tangent = Math.tan(Math.abs(turn) / 2);
  const reach = radius * tangent;
  const room = Math.min(into.length, outOf.length);
  if (reach > room + 1)
    return notChanged(
      `The rounding needs ${say(reach)} of each edge, and the shorter one has ${say(room)}`,
      `Give a radius of at most ${say(Math.floor(room / tangent / 100) * 100)}.`,
    );
  const start = vertexAt(whole(at.x - into.x * reach), whole(at.y - into.y * reach), Math.tan(turn / 4));
  const end = vertexAt(whole(at.x + outOf.x * reach), whole(at.y + outOf.y * reach));
  return changed(vertices.toSpliced(index, 1, start, end));
}

function whole(nm: number): number {
  return Math.round(nm) + 0;
}

function unit(from: Point, to: Point): { readonly x: number; readonly y: number; readonly length: number } {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length, length };
}
