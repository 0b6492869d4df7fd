import { MAX_COORDINATE, type Point } from '../geom/point.ts';
import { type Vertex, vertexAt } from '../geom/vertex.ts';
import { changed, notChanged, type OutlineChange } from './outline-change.ts';

/**
 * An outline made larger or smaller about a point, for one that was given in other units: 25.4 where inches were taken
 * for millimetres.
 *
 * @param about nanometres; it stays where it is.
 * @accuracy 0.71 nm a vertex.
 * @check tests/unit/profile/place-outline.test.ts
 */
export function scaleOutline(vertices: readonly Vertex[], factor: number, about: Point): OutlineChange {
  if (!Number.isFinite(factor) || factor <= 0)
    return notChanged('The size cannot be multiplied by that', 'Give a number above 0, such as 25.4 from inches.');
  const scale = (at: number, from: number) => Math.round(from + (at - from) * factor) + 0;
  const scaled = vertices.map(({ x, y, bulge }) => vertexAt(scale(x, about.x), scale(y, about.y), bulge));
  if (scaled.some(({ x, y }) => Math.max(Math.abs(x), Math.abs(y)) > MAX_COORDINATE))
    return notChanged(
      'It would reach further than 47 mm from the origin',
      'Move it to the origin first, or give less.',
    );
  return changed(scaled);
}
