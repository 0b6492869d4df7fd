import type { Point } from '../geom/point.ts';
import { arcOf, type Vertex, vertexAt } from '../geom/vertex.ts';

/** A stretch of a line of chords that is an arc within a tolerance. */
export interface FoundArc {
  /** Numbers of its first and its last point. */
  readonly from: number;
  readonly to: number;
  readonly bulge: number;
  /** How far its middle stands off its chord, nanometres. */
  readonly bow: number;
  /** How far chords and arc are apart at most, nanometres. */
  readonly off: number;
}

/** Chords that turn more than this at a point, 45 degrees, are corners and no arc. */
const STEEPEST = Math.PI / 4 + 1e-6;

/** Fewest chords that are taken for an arc: with two, any three points lie on a circle. */
const LEAST_CHORDS = 3;

/** A found arc is at most a half circle; rounding may make it look slightly longer. */
const MOST_BULGE = 1.02;

/**
 * The stretches of an open line of chords that lie on one circle within a tolerance, both their points and their chords.
 * Looks for the longest arc from each point on.
 *
 * @param points in order, nanometres.
 * @param tolerance nanometres; a stretch that is straight within it is no arc.
 * @returns arcs in order that share at most their ends.
 * @check tests/unit/profile/simplify-drawn.test.ts
 */
export function findArcs(points: readonly Point[], tolerance: number): FoundArc[] {
  const found: FoundArc[] = [];
  for (let from = 0; from + LEAST_CHORDS < points.length; ) {
    const arc = longestArc(points, from, tolerance);
    if (arc) found.push(arc);
    from = arc ? arc.to : from + 1;
  }
  return found;
}

/** A closed line of chords as an outline: what {@link findArcs} finds as arcs, every other point as it is. */
export function withArcs(points: readonly Point[], tolerance: number): Vertex[] {
  const open = openedAtCorner(points);
  const vertices: Vertex[] = [];
  let at = 0;
  for (const { from, to, bulge } of findArcs(open, tolerance)) {
    vertices.push(...open.slice(at, from), vertexAt(open[from].x, open[from].y, bulge));
    at = to;
  }
  return [...vertices, ...open.slice(at, -1)];
}

/**
 * A closed line as an open one that begins and ends where no arc runs through: at the corner where it turns most, or
 * where it has no corner, at the start of its longest edge.
 */
export function openedAtCorner(points: readonly Point[]): Point[] {
  const n = points.length;
  const turns = points.map((p, i) => Math.abs(turnAt(points[(i + n - 1) % n], p, points[(i + 1) % n])));
  const lengths = points.map((p, i) => Math.hypot(points[(i + 1) % n].x - p.x, points[(i + 1) % n].y - p.y));
  const start = Math.max(...turns) > STEEPEST ? firstOfMost(turns) : firstOfMost(lengths);
  return [...points.slice(start), ...points.slice(0, start + 1)];
}

/** The place of the greatest number; of nearly equal ones the first, whichever rounding made the largest. */
function firstOfMost(numbers: readonly number[]): number {
  const most = Math.max(...numbers) * (1 - 1e-6);
  return numbers.findIndex((number) => number >= most);
}

/** The longest arc that starts at a point; found by doubling its length, then by halving the steps. */
function longestArc(points: readonly Point[], from: number, tolerance: number): FoundArc | null {
  let best = fitArc(points, from, from + LEAST_CHORDS, tolerance);
  if (!best) return null;
  let beyond = points.length;
  for (let step = LEAST_CHORDS; best.to + 1 < beyond; ) {
    const next = fitArc(points, from, Math.min(best.to + step, beyond - 1), tolerance);
    beyond = next ? beyond : Math.min(best.to + step, beyond - 1);
    step = next && beyond === points.length ? 2 * step : Math.max(1, Math.floor((beyond - (next ?? best).to) / 2));
    best = next ?? best;
  }
  return best.bow > tolerance ? best : null;
}

/** The arc between two points that the points between them lie on, if there is one. */
function fitArc(points: readonly Point[], from: number, to: number, tolerance: number): FoundArc | null {
  const [a, b] = [points[from], points[to]];
  if (a.x === b.x && a.y === b.y) return null;
  if (!turnsEvenly(points, from, to)) return null;
  const bulge = middleBulge(points, from, to);
  const half = Math.hypot(b.x - a.x, b.y - a.y) / 2;
  if (Math.abs(bulge) > MOST_BULGE) return null;
  const off = furthestOff(points, from, to, bulge);
  return off <= tolerance ? { from, to, bulge, bow: Math.abs(bulge) * half, off } : null;
}

/** Whether a stretch turns to one side only, and nowhere as at a corner. */
function turnsEvenly(points: readonly Point[], from: number, to: number): boolean {
  let side = 0;
  for (let i = from + 1; i < to; i++) {
    const turn = turnAt(points[i - 1], points[i], points[i + 1]);
    side ||= Math.sign(turn);
    if (Math.sign(turn) !== side || Math.abs(turn) > STEEPEST) return false;
  }
  return side !== 0;
}

/** The bulge of an arc through the middle of the points between its ends: the mean over their middle third. */
function middleBulge(points: readonly Point[], from: number, to: number): number {
  const third = (to - from) / 3;
  const low = from + Math.max(1, Math.floor(third));
  const high = Math.min(to - 1, Math.max(low, from + Math.ceil(2 * third)));
  let sum = 0;
  for (let i = low; i <= high; i++) sum += bulgeThrough(points[from], points[i], points[to]);
  return sum / (high - low + 1);
}

/** The bulge of the arc from `a` through `p` to `b`: from p the chord is seen under half a turn less half the arc. */
function bulgeThrough(a: Point, p: Point, b: Point): number {
  const [ax, ay, bx, by] = [a.x - p.x, a.y - p.y, b.x - p.x, b.y - p.y];
  const seen = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  return seen === 0 ? 0 : -Math.sign(seen) * Math.tan((Math.PI - Math.abs(seen)) / 2);
}

/** How far the points and chords of a stretch are off an arc at most; infinite where they do not follow its way. */
function furthestOff(points: readonly Point[], from: number, to: number, bulge: number): number {
  const arc = arcOf({ ...points[from], bulge }, points[to]);
  if (!arc) return Number.POSITIVE_INFINITY;
  const { centre, radius } = arc;
  let off = 0;
  for (let i = from; i < to; i++) {
    const [px, py] = [points[i].x - centre.x, points[i].y - centre.y];
    const [qx, qy] = [points[i + 1].x - centre.x, points[i + 1].y - centre.y];
    // Seen from the centre, each chord must lead on the same way.
    if (Math.sign(px * qy - py * qx) !== Math.sign(bulge)) return Number.POSITIVE_INFINITY;
    off = Math.max(off, Math.abs(Math.hypot(qx, qy) - radius), radius - nearestToOrigin(px, py, qx, qy));
  }
  return off;
}

/** Distance of a segment from the origin. */
function nearestToOrigin(px: number, py: number, qx: number, qy: number): number {
  const [ux, uy] = [qx - px, qy - py];
  const along = Math.min(1, Math.max(0, -(px * ux + py * uy) / (ux * ux + uy * uy)));
  return Math.hypot(px + along * ux, py + along * uy);
}

/** Angle by which a line turns at the middle one of three points, radians, positive to the left. */
function turnAt(a: Point, p: Point, b: Point): number {
  const [ux, uy, vx, vy] = [p.x - a.x, p.y - a.y, b.x - p.x, b.y - p.y];
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}
