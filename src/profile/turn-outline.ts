import type { Point } from '../geom/point.ts';
import { type Vertex, vertexAt } from '../geom/vertex.ts';

/**
 * An outline turned about a point.
 *
 * @param angle radians, positive to the left.
 * @param about nanometres, fractions allowed.
 * @returns whole nanometres; bulges stay as they are.
 * @accuracy 0.71 nm a vertex, so turning back leaves no coordinate off by more than 1 nm.
 * @check tests/laws/outline-operations.test.ts
 */
export function turnOutline(vertices: readonly Vertex[], angle: number, about: Point): Vertex[] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return vertices.map(({ x, y, bulge }) => {
    const [dx, dy] = [x - about.x, y - about.y];
    return vertexAt(
      Math.round(about.x + dx * cos - dy * sin) + 0,
      Math.round(about.y + dx * sin + dy * cos) + 0,
      bulge,
    );
  });
}
