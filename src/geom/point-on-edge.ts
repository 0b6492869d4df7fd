import type { Point } from './point.ts';
import { arcOf, type Vertex } from './vertex.ts';

/**
 * The point of an edge a part of the way along it: along the arc where it is one.
 *
 * @param part 0 its first vertex, 1 its last.
 * @returns fractions of nanometres.
 * @check tests/unit/geom/point-on-edge.test.ts
 */
export function pointOnEdge(from: Vertex, to: Point, part: number): Point {
  const arc = arcOf(from, to);
  if (!arc) return { x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part };
  const angle = arc.start + arc.sweep * part;
  return { x: arc.centre.x + arc.radius * Math.cos(angle), y: arc.centre.y + arc.radius * Math.sin(angle) };
}

/**
 * How far along an edge the place is that comes nearest to a point.
 *
 * @returns from 0, its first vertex, to 1, its last; for an arc by its angle.
 * @check tests/unit/geom/point-on-edge.test.ts
 */
export function partOfEdge(from: Vertex, to: Point, point: Point): number {
  const arc = arcOf(from, to);
  if (!arc) {
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const length = dx * dx + dy * dy;
    if (length === 0) return 0;
    return Math.min(1, Math.max(0, ((point.x - from.x) * dx + (point.y - from.y) * dy) / length));
  }
  const full = 2 * Math.PI;
  const angle = (Math.atan2(point.y - arc.centre.y, point.x - arc.centre.x) - arc.start) * Math.sign(arc.sweep);
  const part = (((angle % full) + full) % full) / Math.abs(arc.sweep);
  if (part <= 1) return part;
  // Beside the arc: its nearer end.
  const first = Math.hypot(point.x - from.x, point.y - from.y);
  return first < Math.hypot(point.x - to.x, point.y - to.y) ? 0 : 1;
}
