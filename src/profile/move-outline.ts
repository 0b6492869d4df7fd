import type { Point } from '../geom/point.ts';
import { type Vertex, vertexAt } from '../geom/vertex.ts';
import { outlineBox } from './outline-box.ts';

/** An outline moved by whole nanometres. */
export function moveOutline(vertices: readonly Vertex[], by: Point): Vertex[] {
  const [dx, dy] = [Math.round(by.x), Math.round(by.y)];
  return vertices.map(({ x, y, bulge }) => vertexAt(x + dx + 0, y + dy + 0, bulge));
}

/** Which upright line of an outline's box comes to stand on x = 0. */
export type OriginSide = 'left' | 'middle' | 'right';

/** An outline moved so that its lowest point is on y = 0 and the left, middle or right of its box on x = 0. */
export function standOnOrigin(vertices: readonly Vertex[], side: OriginSide): Vertex[] {
  const { minX, maxX, minY } = outlineBox(vertices);
  const x = { left: minX, middle: (minX + maxX) / 2, right: maxX }[side];
  return moveOutline(vertices, { x: -x, y: -minY });
}
