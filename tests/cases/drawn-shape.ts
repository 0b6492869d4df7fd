import { boxOf } from '../../src/geom/point.ts';
import { edgePoints, type Vertex } from '../../src/geom/vertex.ts';

/** Area inside a closed line with bulged edges, in square millimetres: its polygon and the segments of its arcs. */
export function drawnArea(vertices: readonly Vertex[]): number {
  let twice = 0;
  for (const [i, from] of vertices.entries()) {
    const to = vertices[(i + 1) % vertices.length];
    twice +=
      ((from.x - vertices[0].x) * (to.y - vertices[0].y) - (to.x - vertices[0].x) * (from.y - vertices[0].y)) / 1e12;
    twice += 2 * arcSegment(Math.hypot(to.x - from.x, to.y - from.y) / 1e6, from.bulge ?? 0);
  }
  return Math.abs(twice) / 2;
}

/** Area between an arc and its chord, below zero where the bulge is. @source r^2 (a - sin a) / 2, a handbook's formula */
export function arcSegment(chord: number, bulge: number): number {
  if (bulge === 0) return 0;
  const radius = (chord * (1 + bulge * bulge)) / (4 * bulge);
  const angle = 4 * Math.atan(bulge);
  return (Math.sign(bulge) * radius * radius * (Math.abs(angle) - Math.sin(Math.abs(angle)))) / 2;
}

/** Left, bottom, width and height in millimetres of a closed line with its arcs, to a few nanometres. */
export function drawnBox(vertices: readonly Vertex[]): { x: number; y: number; width: number; height: number } {
  const points = vertices.flatMap((vertex, i) => edgePoints(vertex, vertices[(i + 1) % vertices.length], 2));
  const { minX, minY, maxX, maxY } = boxOf(points);
  return { x: minX / 1e6, y: minY / 1e6, width: (maxX - minX) / 1e6, height: (maxY - minY) / 1e6 };
}
