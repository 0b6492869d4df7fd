import type { Point } from '../geom/point.ts';
import { type Vertex, vertexAt } from '../geom/vertex.ts';

/** A corner of an outline and the radius of the arc that is to replace it; 0 keeps it sharp. Nanometres. */
export interface Corner {
  readonly at: Point;
  readonly radius: number;
}

/** Greatest distance, in nanometres, between an arc and the chords that stand for it: 1 um. */
export const CHORD_ERROR = 1_000;

/** An edge, given by the corner it starts from, that is too short for the arcs at its two ends. Nanometres. */
export interface CrampedEdge {
  readonly from: number;
  readonly length: number;
  /** What the two arcs take away from the edge together. */
  readonly needed: number;
}

/**
 * The edges of a closed outline that are too short for the arcs asked for at their ends.
 *
 * An arc of radius r that turns by an angle d and is tangent to both edges starts r tan(d/2) from the corner.
 *
 * @returns every such edge in order; empty where all arcs fit. Arcs that just meet are accepted.
 * @check tests/unit/profile/round-corners.test.ts
 */
export function crampedEdges(corners: readonly Corner[]): CrampedEdge[] {
  const reach = corners.map((_, i) => tangentLength(corners, i));
  return corners.flatMap((corner, i) => {
    const next = (i + 1) % corners.length;
    const length = distance(corner.at, corners[next].at);
    const needed = reach[i] + reach[next];
    return needed > length + 1e-3 ? [{ from: i, length, needed }] : [];
  });
}

/**
 * The outline with every corner that has a radius replaced by the arc tangent to its two edges, the arc by chords.
 *
 * Vertices lie on the arc, so a chord lies on the side of the arc's centre by at most {@link CHORD_ERROR}: an
 * outward corner loses at most that much material, an inward corner gains at most that much. Rounding to whole
 * nanometres adds at most 0.71 nm.
 *
 * @param corners closed outline in order, first corner not repeated; no edge may be cramped.
 * @returns vertices in whole nanometres, in the same order and direction, no two in a row the same.
 * @check tests/unit/profile/round-corners.test.ts
 */
export function roundCorners(corners: readonly Corner[]): Point[] {
  const points = corners.flatMap((_, i) => arcAt(corners, i));
  const whole = points.map((p) => ({ x: Math.round(p.x) + 0, y: Math.round(p.y) + 0 }));
  return whole.filter((p, i) => !samePoint(p, whole[(i + whole.length - 1) % whole.length]));
}

/**
 * The outline of {@link roundCorners} with its arcs as bulged edges in place of chords.
 *
 * @accuracy the ends of an arc are rounded to whole nanometres, which moves the arc by about as much.
 * @check tests/unit/profile/round-corners.test.ts
 */
export function roundedVertices(corners: readonly Corner[]): Vertex[] {
  const vertices = corners.flatMap((corner, i) => {
    const tangent = tangentAt(corners, i);
    if (!tangent) return [vertexAt(Math.round(corner.at.x) + 0, Math.round(corner.at.y) + 0)];
    const { start, centre, turn } = tangent;
    const [from, to] = [start, turned(start, centre, turn)].map((p) => ({
      x: Math.round(p.x) + 0,
      y: Math.round(p.y) + 0,
    }));
    return samePoint(from, to) ? [from] : [vertexAt(from.x, from.y, Math.tan(turn / 4)), to];
  });
  // Where two arcs meet, the end of the first is the start of the second.
  return vertices.filter((v, i) => !samePoint(v, vertices[(i + 1) % vertices.length]));
}

/** Distance from corner `i` to the two places where its arc touches the edges. */
function tangentLength(corners: readonly Corner[], i: number): number {
  const { radius } = corners[i];
  return radius > 0 ? radius * Math.tan(Math.abs(turnAt(corners, i)) / 2) : 0;
}

/** Angle by which the outline turns at corner `i`, radians, positive to the left. */
function turnAt(corners: readonly Corner[], i: number): number {
  const into = directionInto(corners, i);
  const outOf = directionInto(corners, (i + 1) % corners.length);
  return Math.atan2(into.x * outOf.y - into.y * outOf.x, into.x * outOf.x + into.y * outOf.y);
}

/** Unit vector along the edge that ends at corner `i`. */
function directionInto(corners: readonly Corner[], i: number): Point {
  const from = corners[(i + corners.length - 1) % corners.length].at;
  const to = corners[i].at;
  const length = distance(from, to);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** The vertices that stand for corner `i`. */
function arcAt(corners: readonly Corner[], i: number): Point[] {
  const { radius } = corners[i];
  const tangent = tangentAt(corners, i);
  if (!tangent) return [corners[i].at];
  const { start, centre, turn } = tangent;
  const steps = chordCount(radius, Math.abs(turn));
  return Array.from({ length: steps + 1 }, (_, k) => turned(start, centre, (turn * k) / steps));
}

/** Where the arc of corner `i` starts, its centre and how far it turns; null where the corner stays sharp. */
function tangentAt(corners: readonly Corner[], i: number): { start: Point; centre: Point; turn: number } | null {
  const { at, radius } = corners[i];
  const turn = turnAt(corners, i);
  if (radius <= 0 || turn === 0) return null;
  const into = directionInto(corners, i);
  const reach = tangentLength(corners, i);
  const side = Math.sign(turn);
  const start = { x: at.x - into.x * reach, y: at.y - into.y * reach };
  return { start, centre: { x: start.x - into.y * radius * side, y: start.y + into.x * radius * side }, turn };
}

/** `point` turned about `centre` by `angle`. */
function turned(point: Point, centre: Point, angle: number): Point {
  const x = point.x - centre.x;
  const y = point.y - centre.y;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { x: centre.x + x * cos - y * sin, y: centre.y + x * sin + y * cos };
}

/** Chords needed for an arc so that each lies within {@link CHORD_ERROR} of it: a chord of angle s sags r(1 - cos(s/2)). */
function chordCount(radius: number, angle: number): number {
  const step = 2 * Math.acos(Math.max(-1, 1 - CHORD_ERROR / radius));
  return Math.max(1, Math.ceil(angle / step - 1e-9));
}

/** Length of the chords that stand for an arc of a radius and an angle, as {@link roundCorners} draws it; nanometres. */
export function arcChord(radius: number, angle: number): number {
  return radius > 0 ? 2 * radius * Math.sin(angle / (2 * chordCount(radius, angle))) : 0;
}

/** Length between two points. */
function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** Whether two points are the same. */
function samePoint(a: Point, b: Point): boolean {
  return a.x === b.x && a.y === b.y;
}
