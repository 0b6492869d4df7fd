import type { Box, Point } from '../../src/geom/point.ts';
import { boxOf } from '../../src/geom/point.ts';
import type { DrawnPath } from '../../src/interchange/drawing.ts';

// Arcs are measured with the sagitta and segment formulas of school geometry, not with the core's own arc.

const QUARTERS = [0, Math.PI / 2, Math.PI, (3 * Math.PI) / 2];

/** Each edge of a drawn path: its ends and the bulge between them. */
export function edgesOf({ vertices, closed }: DrawnPath): { from: Point; to: Point; bulge: number }[] {
  const count = closed ? vertices.length : vertices.length - 1;
  return Array.from({ length: count }, (_, i) => {
    const from = vertices[i];
    return { from, to: vertices[(i + 1) % vertices.length], bulge: from.bulge ?? 0 };
  });
}

/** Enclosed area of a closed path, positive when counter-clockwise, in the square of its unit. */
export function drawnArea(path: DrawnPath): number {
  let twice = 0;
  let segments = 0;
  const [origin] = path.vertices;
  for (const { from, to, bulge } of edgesOf(path)) {
    twice += (from.x - origin.x) * (to.y - origin.y) - (to.x - origin.x) * (from.y - origin.y);
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    const angle = 4 * Math.atan(bulge);
    // Radius from chord and sagitta s = b c / 2: r = (c^2 / 4 + s^2) / 2 s.
    const sagitta = (bulge * chord) / 2;
    const radius = bulge === 0 ? 0 : (chord * chord) / (8 * sagitta) + sagitta / 2;
    segments += (radius * radius * (angle - Math.sin(angle))) / 2;
  }
  return twice / 2 + segments;
}

/** A point of an edge at a share of its way. */
export function pointOnEdge(from: Point, to: Point, bulge: number, share: number): Point {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  if (bulge === 0) return { x: from.x + dx * share, y: from.y + dy * share };
  // With the chord as the line from 0 to 1, the angle at the circle over it is half the arc's.
  const half = 2 * Math.atan(bulge);
  const angle = half * share;
  const along = Math.sin(angle) / Math.sin(half);
  const [ux, uy] = polar(along, half - angle);
  return { x: from.x + ux * dx + uy * dy, y: from.y + ux * dy - uy * dx };
}

/** Chord from the arc's begin to a point of it, by its length and its angle to the right of the whole chord. */
function polar(length: number, angle: number): [number, number] {
  return [length * Math.cos(angle), length * Math.sin(angle)];
}

/** The box round a drawn path, arcs with their outermost points. */
export function drawnBox(path: DrawnPath): Box {
  const points = edgesOf(path).flatMap(({ from, to, bulge }) => [from, to, ...outermost(from, to, bulge)]);
  return boxOf(points);
}

/** Points of an arc where it runs level or upright. */
function outermost(from: Point, to: Point, bulge: number): Point[] {
  if (bulge === 0) return [];
  const angle = 4 * Math.atan(bulge);
  const chord = Math.atan2(to.y - from.y, to.x - from.x);
  // The direction of travel turns evenly from half the arc's angle before the chord's to half after it.
  const shares = QUARTERS.flatMap((quarter) =>
    [-2, -1, 0, 1, 2].map((turn) => (quarter + turn * 2 * Math.PI - (chord - angle / 2)) / angle),
  );
  return shares.filter((share) => share > 0 && share < 1).map((share) => pointOnEdge(from, to, bulge, share));
}
