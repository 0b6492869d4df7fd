import type { Point } from '../geom/point.ts';
import { nearestOnSegment } from '../geom/segment-distance.ts';
import { arcOf, type Vertex, vertexAt } from '../geom/vertex.ts';

/**
 * An outline with one more vertex on an edge, where the edge comes nearest to a place. An arc becomes two arcs of the
 * same circle, so that the outline stays as it was.
 *
 * @param edge number of the vertex that it starts from.
 * @param near nanometres.
 * @returns the outline, its new vertex numbered `edge + 1`; where the place is nearest to an end of the edge, the middle
 *   of the edge is taken.
 * @accuracy the new vertex is rounded to whole nanometres, the arcs follow it by as much.
 * @check tests/unit/profile/edit-vertices.test.ts, tests/laws/outline-operations.test.ts
 */
export function insertNear(vertices: readonly Vertex[], edge: number, near: Point): Vertex[] {
  return insertAt(vertices, edge, shareNear(vertices[edge], vertices[(edge + 1) % vertices.length], near));
}

/** An outline with one more vertex in the middle of an edge. */
export function insertInMiddle(vertices: readonly Vertex[], edge: number): Vertex[] {
  return insertAt(vertices, edge, 0.5);
}

/** An outline with one more vertex on an edge, so far along it: 0 its start, 1 its end. */
export function insertAt(vertices: readonly Vertex[], edge: number, share: number): Vertex[] {
  const from = vertices[edge];
  const to = vertices[(edge + 1) % vertices.length];
  const { x, y } = pointAlong(from, to, share);
  const sweep = arcOf(from, to)?.sweep ?? 0;
  const first = vertexAt(from.x, from.y, Math.tan((sweep * share) / 4));
  const second = vertexAt(x, y, Math.tan((sweep * (1 - share)) / 4));
  return vertices.toSpliced(edge, 1, first, second);
}

/** The point of an edge so far along it, whole nanometres. */
function pointAlong(from: Vertex, to: Point, share: number): Point {
  const arc = arcOf(from, to);
  const angle = arc ? arc.start + arc.sweep * share : 0;
  const x = arc ? arc.centre.x + arc.radius * Math.cos(angle) : from.x + (to.x - from.x) * share;
  const y = arc ? arc.centre.y + arc.radius * Math.sin(angle) : from.y + (to.y - from.y) * share;
  return { x: Math.round(x) + 0, y: Math.round(y) + 0 };
}

/** Nearer to an end than this share of the edge counts as the end itself. */
const END = 1e-4;

/** How far along an edge the place is that comes nearest to a point; the middle where that is an end. */
function shareNear(from: Vertex, to: Point, near: Point): number {
  const arc = arcOf(from, to);
  const share = arc ? shareOfAngle(arc, near) : shareOfSegment(from, to, near);
  return share > END && share < 1 - END ? share : 0.5;
}

function shareOfSegment(from: Point, to: Point, near: Point): number {
  const { x, y } = nearestOnSegment(near, from, to);
  return Math.hypot(x - from.x, y - from.y) / Math.max(1, Math.hypot(to.x - from.x, to.y - from.y));
}

function shareOfAngle({ centre, start, sweep }: NonNullable<ReturnType<typeof arcOf>>, near: Point): number {
  const full = 2 * Math.PI;
  const turns = (Math.atan2(near.y - centre.y, near.x - centre.x) - start) * Math.sign(sweep);
  return (((turns % full) + full) % full) / Math.abs(sweep);
}
