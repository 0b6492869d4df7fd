import { type Affine, mapPoint } from '../../geom/affine.ts';
import type { Point } from '../../geom/point.ts';
import { type Vertex, vertexAt } from '../../geom/vertex.ts';
import { CURVE_CHORD_ERROR } from '../drawing.ts';
import { type ArcPart, arcShape } from './arc-shape.ts';
import type { PathPart } from './path-part.ts';

/** A chain of vertices in nanometres. */
export interface Chain {
  readonly vertices: readonly Vertex[];
  readonly closed: boolean;
}

/** The chains of one shape; or why the whole shape, or the whole drawing, cannot be had. */
export type Drawn =
  | { readonly kind: 'chains'; readonly chains: readonly Chain[]; readonly pointless: number }
  | { readonly kind: 'too far' }
  | { readonly kind: 'too many' };

/** Farthest a point may lie from the origin, in nanometres: one kilometre. */
const MAX_REACH = 1e12;

/** A chain whose ends are nearer than this, in nanometres, is meant to be closed: a micrometre. */
const SAME_POINT = 1_000;

/** A Bezier curve of a path. */
type CurvePart = Exclude<PathPart, readonly ['M' | 'L' | 'Z' | 'A', ...number[]]>;

/** What is being drawn: finished chains, and the open one. */
interface Pen {
  readonly map: Affine;
  readonly chains: Chain[];
  /** Points that may still be made. */
  left: number;
  pointless: number;
  /** Whether the path has moved to a place and drawn nothing from there. */
  moved: boolean;
  vertices: Vertex[];
  /** Where the path is, and where the current chain began, in user units. */
  at: Point;
  start: Point;
}

/**
 * The parts of a shape under a map, as chains of vertices.
 *
 * @param parts absolute, in user units, from `M` on.
 * @param map user units to nanometres.
 * @param mostPoints how many points may be made.
 * @returns a chain a subpath; `pointless` counts those that were left out for having fewer than two different points.
 * @accuracy straight ends and circular arcs as exact as 64-bit numbers; the chords of other curves have their ends on
 *   the curve and lie within {@link CURVE_CHORD_ERROR} of it. A closing point within 1 um of the first is the first.
 * @source the number of chords of a Bezier curve: G. Wang, The subdivision method for finding the intersection
 *   between two Bezier curves or surfaces, Zhejiang University Journal, 1984; from memory.
 * @check tests/unit/interchange/svg-pieces.test.ts, tests/browser/svg-against-browser.test.ts
 */
export function drawParts(parts: readonly PathPart[], map: Affine, mostPoints: number): Drawn {
  const origin = { x: 0, y: 0 };
  const blank = { chains: [], vertices: [], pointless: 0, moved: false };
  const pen: Pen = { map, ...blank, left: mostPoints, at: origin, start: origin };
  for (const part of parts) {
    if (!controlPoints(part).every(([x, y]) => isNear(mapPoint(map, x, y)))) return { kind: 'too far' };
    drawPart(pen, part);
    if (pen.left < 0) return { kind: 'too many' };
  }
  endChain(pen, 'end');
  return { kind: 'chains', chains: pen.chains, pointless: pen.pointless };
}

function drawPart(pen: Pen, part: PathPart): void {
  if (part[0] === 'Z') {
    endChain(pen, 'close');
    pen.at = pen.start;
    return;
  }
  const end = { x: part[part.length - 2] as number, y: part[part.length - 1] as number };
  if (part[0] === 'M') {
    endChain(pen, 'move');
    pen.moved = true;
    pen.start = end;
  } else {
    if (pen.vertices.length === 0) pen.vertices.push(mapPoint(pen.map, pen.at.x, pen.at.y));
    if (part[0] === 'A') arcTo(pen, part);
    else if (part[0] === 'Q' || part[0] === 'C') curveTo(pen, part);
    else lineTo(pen, end);
  }
  pen.at = end;
}

function controlPoints(part: PathPart): (readonly [number, number])[] {
  if (part[0] === 'Z') return [];
  if (part[0] === 'A') return [[part[6], part[7]]];
  const [, ...n] = part;
  return Array.from({ length: n.length / 2 }, (_, i) => [n[2 * i], n[2 * i + 1]]);
}

function isNear({ x, y }: Point): boolean {
  return Math.abs(x) <= MAX_REACH && Math.abs(y) <= MAX_REACH;
}

function lineTo(pen: Pen, end: Point): void {
  pen.left--;
  pen.vertices.push(mapPoint(pen.map, end.x, end.y));
}

/** Chords to the given number of equal steps of a curve's parameter; the last one ends at `end` exactly. */
function chordsTo(pen: Pen, count: number, pointAt: (share: number) => Point, end: Point): void {
  pen.left -= count;
  if (pen.left < 0) return;
  for (let k = 1; k < count; k++) pen.vertices.push(pointAt(k / count));
  pen.vertices.push(mapPoint(pen.map, end.x, end.y));
}

function arcTo(pen: Pen, part: ArcPart): void {
  const end = { x: part[6], y: part[7] };
  const shape = arcShape(pen.at, part, pen.map);
  if (shape.kind === 'nothing') return;
  if (shape.kind === 'line') lineTo(pen, end);
  else if (shape.kind === 'curve') chordsTo(pen, shape.count, shape.pointAt, end);
  else {
    const last = pen.vertices.length - 1;
    pen.vertices[last] = vertexAt(pen.vertices[last].x, pen.vertices[last].y, shape.bulges[0]);
    if (shape.middle) pen.vertices.push(vertexAt(shape.middle.x, shape.middle.y, shape.bulges[1]));
    lineTo(pen, end);
  }
}

/** A Bezier curve by Wang's bound on its second differences: so many equal steps keep every chord near enough. */
function curveTo(pen: Pen, part: CurvePart): void {
  const points = [pen.at, ...controlPoints(part).map(([x, y]) => ({ x, y }))].map(({ x, y }) =>
    mapPoint(pen.map, x, y),
  );
  const degree = points.length - 1;
  let bend = 0;
  for (let i = 0; i + 2 <= degree; i++) {
    const [a, b, c] = points.slice(i, i + 3);
    bend = Math.max(bend, Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y));
  }
  const count = Math.max(1, Math.ceil(Math.sqrt((degree * (degree - 1) * bend) / (8 * CURVE_CHORD_ERROR))));
  const [, ...n] = part;
  chordsTo(pen, count, (share) => pointOnCurve(points, share), { x: n[n.length - 2], y: n[n.length - 1] });
}

/** De Casteljau's construction. */
function pointOnCurve(points: readonly Point[], share: number): Point {
  let left = [...points];
  while (left.length > 1) {
    left = left.slice(1).map((next, i) => ({
      x: left[i].x + (next.x - left[i].x) * share,
      y: left[i].y + (next.y - left[i].y) * share,
    }));
  }
  return left[0];
}

/** Puts the open chain away, if there is one; one that ends where it began is closed, whatever it says. */
function endChain(pen: Pen, by: 'close' | 'move' | 'end'): void {
  const { vertices } = pen;
  const { moved } = pen;
  pen.vertices = [];
  pen.moved = false;
  if (vertices.length === 0) {
    // Of several moves in a row the last one counts.
    if (moved && by !== 'move') pen.pointless++;
    return;
  }
  const kept = vertices.filter((vertex, i) => i === vertices.length - 1 || !isSame(vertex, vertices[i + 1], 0));
  const meets = kept.length > 1 && isSame(kept[0], kept[kept.length - 1], SAME_POINT);
  if (meets) kept.pop();
  if (kept.length < 2) pen.pointless++;
  else pen.chains.push({ vertices: kept, closed: by === 'close' || meets });
}

function isSame(a: Point, b: Point, within: number): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) <= within;
}
