import type { Point } from '../geom/point.ts';

/** A straight run is at least this long, in pixels; its ends, where corners are rounded off, are left out of the fit. */
const LEAST_RUN = 5;
const LEFT_OUT = 1.75;

/** What lies between two straight runs that meet in a corner is at most this long, in pixels. */
const LONGEST_ROUNDING = 4;

/** A corner moves by at most this, in pixels: a rounding that is larger is one of the part, and stays. */
const MOST_MOVED = 1;

/** Sine of the least turn that counts as a corner, about 15 degrees. */
const LEAST_TURN = 0.26;

/** An outline after its corners were sharpened. */
export interface Sharpened {
  readonly points: readonly Point[];
  /** How far the furthest corner was moved, in the unit of the points. */
  readonly moved: number;
}

/** A line through `at` along the unit vector `along`. */
interface FittedLine {
  readonly at: Point;
  readonly along: Point;
}

/**
 * Sharpens the corners that a contour rounds off: where two straight runs of the traced line meet within a pixel of it,
 * the lines that fit them best give the corner.
 *
 * @param traced the contour.
 * @param kept numbers of its points that make the simplified outline, rising.
 * @param pixel the size of a pixel, in the unit of the points.
 * @check tests/unit/trace/sharpen-corners.test.ts
 */
export function sharpenCorners(traced: readonly Point[], kept: readonly number[], pixel: number): Sharpened {
  const lines = kept.map((from, k) => fittedRun(traced, from, nextKept(traced, kept, k), pixel));
  const corners = new Map<number, Point>();
  const gone = new Set<number>();
  let moved = 0;
  for (const [k, line] of lines.entries()) {
    if (!line) continue;
    const rounding = roundingAfter(traced, kept, lines, k, pixel);
    if (!rounding) continue;
    const corner = meeting(line, rounding.line);
    if (!corner) continue;
    const off = Math.min(...rounding.points.map((i) => Math.hypot(traced[i].x - corner.x, traced[i].y - corner.y)));
    if (off > MOST_MOVED * pixel) continue;
    moved = Math.max(moved, off);
    for (const at of rounding.vertices) gone.add(at);
    gone.delete(rounding.vertices[0]);
    corners.set(rounding.vertices[0], corner);
  }
  const points = kept.flatMap((i, k) => (gone.has(k) ? [] : [corners.get(k) ?? traced[i]]));
  return points.length < 3 ? { points: kept.map((i) => traced[i]), moved: 0 } : { points, moved };
}

/** The number of the contour point where run `k` ends; past the end of the list where it goes round. */
function nextKept(traced: readonly Point[], kept: readonly number[], k: number): number {
  return k + 1 < kept.length ? kept[k + 1] : kept[0] + traced.length;
}

/** The line that fits a run of the contour best; null where the run is too short to tell one. */
function fittedRun(traced: readonly Point[], from: number, to: number, pixel: number): FittedLine | null {
  const at = (i: number) => traced[i % traced.length];
  const [a, b] = [at(from), at(to)];
  if (Math.hypot(b.x - a.x, b.y - a.y) < LEAST_RUN * pixel) return null;
  const isInside = (p: Point) =>
    Math.hypot(p.x - a.x, p.y - a.y) > LEFT_OUT * pixel && Math.hypot(p.x - b.x, p.y - b.y) > LEFT_OUT * pixel;
  const inner: Point[] = [];
  for (let i = from + 1; i < to; i++) if (isInside(at(i))) inner.push(at(i));
  return inner.length < 3 ? null : fitLine(inner, { x: b.x - a.x, y: b.y - a.y });
}

/** The line with the least sum of squared distances, running the way of `along`. */
function fitLine(points: readonly Point[], along: Point): FittedLine {
  const n = points.length;
  const at = { x: points.reduce((s, p) => s + p.x, 0) / n, y: points.reduce((s, p) => s + p.y, 0) / n };
  let [xx, xy, yy] = [0, 0, 0];
  for (const p of points) {
    const [x, y] = [p.x - at.x, p.y - at.y];
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const way = Math.cos(angle) * along.x + Math.sin(angle) * along.y < 0 ? -1 : 1;
  return { at, along: { x: way * Math.cos(angle), y: way * Math.sin(angle) } };
}

/** The rounding between run `k` and the next fitted one: its vertices and contour points; null where it is too long. */
function roundingAfter(
  traced: readonly Point[],
  kept: readonly number[],
  lines: readonly (FittedLine | null)[],
  k: number,
  pixel: number,
) {
  const vertices: number[] = [];
  let long = 0;
  for (let step = 1; step <= kept.length; step++) {
    const j = (k + step) % kept.length;
    vertices.push(j);
    const line = lines[j];
    if (line) return { line, vertices, points: contourBetween(traced, kept, vertices) };
    const [a, b] = [traced[kept[j]], traced[nextKept(traced, kept, j) % traced.length]];
    long += Math.hypot(b.x - a.x, b.y - a.y);
    if (long > LONGEST_ROUNDING * pixel) return null;
  }
  return null;
}

/** Numbers of the contour's points from the first of some kept vertices to the last, a few more at either end. */
function contourBetween(traced: readonly Point[], kept: readonly number[], vertices: readonly number[]): number[] {
  const n = traced.length;
  const first = kept[vertices[0]];
  const last = kept[vertices[vertices.length - 1]];
  const count = ((last - first + n) % n) + 5;
  return Array.from({ length: Math.min(n, count) }, (_, i) => (first - 2 + i + n) % n);
}

/** Where two lines meet; null where they turn too little into each other. */
function meeting(a: FittedLine, b: FittedLine): Point | null {
  const turn = a.along.x * b.along.y - a.along.y * b.along.x;
  if (Math.abs(turn) < LEAST_TURN) return null;
  const along = ((b.at.x - a.at.x) * b.along.y - (b.at.y - a.at.y) * b.along.x) / turn;
  return { x: a.at.x + along * a.along.x, y: a.at.y + along * a.along.y };
}
