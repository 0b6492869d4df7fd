import type { Point } from '../geom/point.ts';
import { simplifyOutline } from '../geom/simplify.ts';

/** A straight run is at least this long, in pixels; its ends, where corners are rounded off, are left out of the fit. */
const LEAST_RUN = 5;
const LEFT_OUT = 1.75;

/** No point of a straight run is further from the line that fits it than this, in pixels; else it is not straight. */
const LOOSEST = 0.5;

/** What lies between two straight runs that meet in a square or wider corner is at most this long, in pixels. */
const LONGEST_ROUNDING = 4;

/** How much sharper corners may exceed those two limits. */
const MOST_EXCESS = 3.5;

/** A square or wider corner moves by at most this, in pixels: a rounding that is larger is one of the part, and stays. */
const MOST_MOVED = 1;

/** Sine of the least turn that counts as a corner, about 15 degrees. */
const LEAST_TURN = 0.26;

/** Straight runs are told apart by what a simplification by this leaves, in pixels. */
const COARSE = 0.35;

/** A contour after its straight runs were straightened and its corners sharpened. */
export interface Sharpened {
  readonly points: readonly Point[];
  /** How far the furthest corner is from the contour, in the unit of the points. */
  readonly moved: number;
}

/** A line through `at` along the unit vector `along`. */
interface FittedLine {
  readonly at: Point;
  readonly along: Point;
}

/** What is found along a contour, by the numbers of the coarse vertices that runs start from. */
interface Runs {
  readonly kept: readonly number[];
  readonly lines: readonly (FittedLine | null)[];
  /** Corners that take the place of a coarse vertex. */
  readonly corners: Map<number, Point>;
  /** Runs between two lines that a corner stands for. */
  readonly gone: Set<number>;
  /** Runs that start, or end, in a sharpened corner. */
  readonly sharpStart: Set<number>;
  readonly sharpEnd: Set<number>;
}

/**
 * Sharpens the corners that a contour rounds off: where two straight runs meet within a pixel of it, the lines that fit
 * them best give the corner, and the runs lie on their lines.
 *
 * @param traced the contour.
 * @param pixel the size of a pixel, in the unit of the points.
 * @check tests/unit/trace/trace-picture.test.ts, tests/outside/trace-outline.test.ts, tests/outside/demo-scan.test.ts
 */
export function sharpenCorners(traced: readonly Point[], pixel: number): Sharpened {
  const wanted = new Set(simplifyOutline(traced, COARSE * pixel));
  const kept = traced.flatMap((point, i) => (wanted.has(point) ? [i] : []));
  const lines = kept.map((from, k) => fittedRun(traced, from, nextKept(traced, kept, k), pixel));
  const runs: Runs = { kept, lines, corners: new Map(), gone: new Set(), sharpStart: new Set(), sharpEnd: new Set() };
  let moved = 0;
  for (const [k, line] of lines.entries()) {
    const rounding = line && roundingAfter(traced, kept, lines, k, pixel);
    const corner = rounding && meeting(line, rounding.line);
    if (!corner) continue;
    const off = Math.min(...rounding.points.map((i) => Math.hypot(traced[i].x - corner.x, traced[i].y - corner.y)));
    const excess = excessOf(line, rounding.line);
    if (off > MOST_MOVED * excess * pixel || rounding.long > LONGEST_ROUNDING * excess * pixel) continue;
    moved = Math.max(moved, off);
    noteCorner(runs, k, rounding.vertices, corner);
  }
  const points = kept.flatMap((_, k) => pointsOfRun(traced, runs, k, pixel));
  return points.length < 3 ? { points: traced, moved: 0 } : { points, moved };
}

/** By how much more than a square corner the one of two lines is rounded off: 1 for a square or wider one. */
function excessOf({ along: a }: FittedLine, { along: b }: FittedLine): number {
  const halfSine = Math.sqrt(Math.max(0, (1 + a.x * b.x + a.y * b.y) / 2));
  return Math.min(MOST_EXCESS, Math.max(1, Math.SQRT1_2 / Math.max(1e-9, halfSine)));
}

function noteCorner(runs: Runs, before: number, vertices: readonly number[], corner: Point): void {
  runs.corners.set(vertices[0], corner);
  for (const vertex of vertices.slice(0, -1)) runs.gone.add(vertex);
  runs.sharpEnd.add(before);
  runs.sharpStart.add(vertices[vertices.length - 1]);
}

/** The points that stand for a run of the contour, its first vertex included, its last not. */
function pointsOfRun(traced: readonly Point[], runs: Runs, k: number, pixel: number): Point[] {
  const { kept, lines, corners, gone, sharpStart, sharpEnd } = runs;
  const from = kept[k];
  const to = nextKept(traced, kept, k);
  const [a, b] = [traced[from], traced[to % traced.length]];
  const corner = corners.get(k);
  const points: Point[] = corner ? [corner] : [];
  if (gone.has(k)) return points;
  if (!corner && !sharpStart.has(k)) points.push(a);
  for (let i = from + 1; i < to; i++) {
    const point = traced[i % traced.length];
    const atStart = Math.hypot(point.x - a.x, point.y - a.y) <= LEFT_OUT * pixel;
    const atEnd = Math.hypot(point.x - b.x, point.y - b.y) <= LEFT_OUT * pixel;
    if ((atStart && sharpStart.has(k)) || (atEnd && sharpEnd.has(k))) continue;
    const line = atStart || atEnd ? null : lines[k];
    points.push(line ? onLine(point, line) : point);
  }
  return points;
}

function onLine(p: Point, { at, along }: FittedLine): Point {
  const far = along.x * (p.x - at.x) + along.y * (p.y - at.y);
  return { x: at.x + far * along.x, y: at.y + far * along.y };
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
  if (inner.length < 3) return null;
  const line = fitLine(inner, { x: b.x - a.x, y: b.y - a.y });
  return inner.every((p) => Math.abs(offLine(p, line)) <= LOOSEST * pixel) ? line : null;
}

/** How far a point is to the left of a line. */
function offLine(p: Point, { at, along }: FittedLine): number {
  return along.x * (p.y - at.y) - along.y * (p.x - at.x);
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
    if (line) return { line, vertices, long, points: contourBetween(traced, kept, vertices) };
    const [a, b] = [traced[kept[j]], traced[nextKept(traced, kept, j) % traced.length]];
    long += Math.hypot(b.x - a.x, b.y - a.y);
    if (long > LONGEST_ROUNDING * MOST_EXCESS * pixel) return null;
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
