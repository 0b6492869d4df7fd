import { MAX_COORDINATE, type Point } from './point.ts';
import { crossingPoint, meetingOf, turn } from './predicates.ts';
import { signedArea } from './signed-area.ts';

/** Most vertices that one outline may have. */
export const MAX_VERTICES = 10_000;

/** What can be wrong with a list of vertices as a simple polygon. */
export type OutlineFaultKind =
  | 'too-few-vertices'
  | 'too-many-vertices'
  | 'too-jagged'
  | 'not-finite'
  | 'too-large'
  | 'repeated-vertex'
  | 'zero-area'
  | 'self-crossing'
  | 'self-touching';

/** One reason why an outline is not a simple polygon, for a person and for a program. */
export interface OutlineFault {
  readonly kind: OutlineFaultKind;
  /** What is wrong, in words, without units or paths. */
  readonly message: string;
  /** Indices of the vertices concerned; for an edge, the index of its first vertex. */
  readonly vertices: readonly number[];
  /** Where it is, nanometres. */
  readonly at?: Point;
}

/**
 * The first reason why `points` (in order, without a closing repeat) are not a simple polygon, or null.
 *
 * @param points vertices in nanometres; whole numbers make the answer exact.
 * @check tests/unit/geom/check-outline.test.ts
 */
export function checkOutline(points: readonly Point[]): OutlineFault | null {
  return checkCount(points) ?? checkNumbers(points) ?? checkArea(points) ?? checkCrossings(points);
}

function checkCount(points: readonly Point[]): OutlineFault | null {
  if (points.length > MAX_VERTICES)
    return fault('too-many-vertices', `has ${points.length} vertices, more than ${MAX_VERTICES}`, []);
  if (points.length < 3)
    return fault('too-few-vertices', `has ${points.length} different vertices, needs at least 3`, []);
  return null;
}

function checkNumbers(points: readonly Point[]): OutlineFault | null {
  for (const [i, p] of points.entries()) {
    if (!Number.isFinite(p.x) || !Number.isFinite(p.y))
      return fault('not-finite', `vertex ${i} is not a pair of numbers`, [i]);
    if (Math.max(Math.abs(p.x), Math.abs(p.y)) > MAX_COORDINATE)
      return fault('too-large', `vertex ${i} is further than 47 mm from the origin`, [i], p);
  }
  return null;
}

function checkArea(points: readonly Point[]): OutlineFault | null {
  const inLine = points.every((p) => turn(points[0], points[1], p) === 0);
  return inLine ? fault('zero-area', 'all vertices lie on one line, so it encloses nothing', [0]) : null;
}

/**
 * First pair of edges that meet anywhere but at a shared end, found by a sweep over the edges in order of
 * their left ends: only edges whose x ranges overlap are compared.
 */
function checkCrossings(points: readonly Point[]): OutlineFault | null {
  const order = points.map((_, i) => i).sort((i, j) => leftEnd(points, i) - leftEnd(points, j));
  let open: number[] = [];
  for (const i of order) {
    const from = leftEnd(points, i);
    open = open.filter((j) => rightEnd(points, j) >= from);
    for (const j of open) {
      const found = checkEdgePair(points, Math.min(i, j), Math.max(i, j));
      if (found) return found;
    }
    open.push(i);
  }
  return signedArea(points) === 0 ? fault('zero-area', 'it encloses no area', [0]) : null;
}

function checkEdgePair(points: readonly Point[], i: number, j: number): OutlineFault | null {
  const n = points.length;
  const [a, b, c, d] = [points[i], points[(i + 1) % n], points[j], points[(j + 1) % n]];
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return null;
  const meeting = meetingOf(a, b, c, d);
  const neighbours = j === i + 1 || (i === 0 && j === n - 1);
  if (meeting === 'apart' || (neighbours && meeting === 'touching')) return null;
  if (meeting === 'crossing')
    return fault('self-crossing', `edge ${i} crosses edge ${j}`, [i, j], crossingPoint(a, b, c, d));
  if (meeting === 'overlapping') return fault('self-touching', `edge ${i} runs back along edge ${j}`, [i, j], c);
  return touchFault(points, i, j);
}

/** Tells a vertex used twice from a vertex that lies on another edge. */
function touchFault(points: readonly Point[], i: number, j: number): OutlineFault {
  const n = points.length;
  for (const u of [i, (i + 1) % n])
    for (const v of [j, (j + 1) % n])
      if (u !== v && points[u].x === points[v].x && points[u].y === points[v].y)
        return fault('repeated-vertex', `vertex ${u} and vertex ${v} are the same point`, [u, v], points[u]);
  const ends = [i, (i + 1) % n, j, (j + 1) % n];
  const edges = [j, j, i, i];
  const k = ends.findIndex((v, e) => turn(points[edges[e]], points[(edges[e] + 1) % n], points[v]) === 0);
  return fault('self-touching', `vertex ${ends[k]} lies on edge ${edges[k]}`, [ends[k], edges[k]], points[ends[k]]);
}

function leftEnd(points: readonly Point[], edge: number): number {
  return Math.min(points[edge].x, points[(edge + 1) % points.length].x);
}

function rightEnd(points: readonly Point[], edge: number): number {
  return Math.max(points[edge].x, points[(edge + 1) % points.length].x);
}

function fault(kind: OutlineFaultKind, message: string, vertices: readonly number[], at?: Point): OutlineFault {
  return at ? { kind, message, vertices, at } : { kind, message, vertices };
}
