import { turnedRound, type Vertex, vertexAt } from '../geom/vertex.ts';
import { outlineBox } from './outline-box.ts';

/** What changes places: left and right, or top and bottom. */
export type MirrorWay = 'left-right' | 'top-bottom';

/**
 * An outline mirrored in its place, about the middle of its box; still counter-clockwise, the first vertex stays the first.
 * Mirroring twice brings every vertex back exactly.
 *
 * @param vertices whole nanometres, counter-clockwise.
 * @check tests/laws/outline-operations.test.ts
 */
export function mirrorOutline(vertices: readonly Vertex[], way: MirrorWay): Vertex[] {
  const { minX, maxX, minY, maxY } = outlineBox(vertices);
  return way === 'left-right' ? mirrorAbout(vertices, way, minX + maxX) : mirrorAbout(vertices, way, minY + maxY);
}

/**
 * An outline mirrored about an upright or a level line.
 *
 * @param twice two times the place of the line, nanometres: the sum of a coordinate and its mirror image.
 */
export function mirrorAbout(vertices: readonly Vertex[], way: MirrorWay, twice: number): Vertex[] {
  const sum = wholeOf(twice);
  const over = vertices.map(({ x, y, bulge = 0 }) =>
    way === 'left-right' ? vertexAt(sum - x, y, -bulge) : vertexAt(x, sum - y, -bulge),
  );
  return turnedRound(over);
}

/** The nearest whole number; halfway between two, the even one, so that mirroring once more finds the same line. */
function wholeOf(sum: number): number {
  const low = Math.floor(sum);
  const isHalfway = Math.abs(sum - low - 0.5) < 1e-3;
  if (!isHalfway) return Math.round(sum);
  return low % 2 === 0 ? low : low + 1;
}
