import type { Point } from '../../../geom/point.ts';
import { partOfEdge } from '../../../geom/point-on-edge.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import { gridPoint } from './snap-point.ts';

/** A vertex is not added nearer to an end of its edge than this part of it. */
const END = 1e-3;

/**
 * How far along an edge a vertex is added where it was pointed at: a straight edge by way of the grid, so that on an
 * upright or level one it comes to stand on it; half way along where the grid leads to an end.
 *
 * @param step of the grid, nanometres; null without one.
 */
export function insertPart(vertices: readonly Vertex[], edge: number, at: Point, step: number | null): number {
  const from = vertices[edge];
  const to = vertices[(edge + 1) % vertices.length];
  const place = step === null || from.bulge ? at : gridPoint(at, { step, finest: 1 }).point;
  const part = partOfEdge(from, to, place);
  return part > END && part < 1 - END ? part : 0.5;
}
