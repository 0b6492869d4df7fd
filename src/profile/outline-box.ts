import { type Box, boxOf, type Point } from '../geom/point.ts';
import { arcOf, type Vertex } from '../geom/vertex.ts';

/**
 * The smallest upright rectangle round an outline, its arcs as arcs and not as chords. Nanometres; where an arc is
 * widest, in fractions.
 *
 * @param vertices at least one.
 * @check tests/unit/profile/place-outline.test.ts
 */
export function outlineBox(vertices: readonly Vertex[]): Box {
  return boxOf(vertices.flatMap((vertex, i) => [vertex, ...widestPoints(vertex, vertices[(i + 1) % vertices.length])]));
}

const QUARTER = Math.PI / 2;

/** Where an arc is furthest left, right, down or up, ends left out. */
function widestPoints(from: Vertex, to: Vertex): Point[] {
  const arc = arcOf(from, to);
  if (!arc) return [];
  const { centre, radius, start, sweep } = arc;
  return [0, 1, 2, 3].flatMap((quarter) => {
    const turns = quarter * QUARTER - start;
    const along = sweep > 0 ? wrapped(turns) : wrapped(-turns);
    if (along >= Math.abs(sweep)) return [];
    return [{ x: centre.x + UNIT[quarter].x * radius, y: centre.y + UNIT[quarter].y * radius }];
  });
}

const UNIT: readonly Point[] = [
  { x: 1, y: 0 },
  { x: 0, y: 1 },
  { x: -1, y: 0 },
  { x: 0, y: -1 },
];

/** An angle from 0 to a full turn. */
function wrapped(angle: number): number {
  const full = 2 * Math.PI;
  return ((angle % full) + full) % full;
}
