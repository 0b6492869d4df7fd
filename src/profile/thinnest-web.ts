import type { Point } from '../geom/point.ts';
import { nearestOnSegment } from '../geom/segment-distance.ts';
import { millOutline } from './mill-outline.ts';
import type { Milled } from './profile.ts';

/** The place where a blade is thinnest: one end on its left face or in a groove there, the other on its right. */
export interface ThinnestWeb {
  /** Nanometres. */
  readonly thickness: number;
  readonly left: Point;
  readonly right: Point;
}

/**
 * The thinnest web of a milled blade, in any direction: between two grooves that stand one above the other on opposite
 * faces it runs aslant, and is thinner than any level cut shows.
 *
 * The rounded corners of the back are no web: below them only the width at which they end counts.
 *
 * @returns null where the blade cannot be milled.
 * @accuracy exact for the polygon of the outline, to a nanometre.
 * @check tests/unit/profile/thinnest-web.test.ts
 */
export function thinnestWeb(milled: Milled): ThinnestWeb | null {
  const points = millOutline({ ...milled, backRadius: 0 });
  if (!Array.isArray(points)) return null;
  const { left, right } = faceLines(points, milled);
  let best: ThinnestWeb | null = null;
  const take = (p: Point, q: Point, swapped: boolean) => {
    const thickness = Math.hypot(p.x - q.x, p.y - q.y);
    if (!best || thickness < best.thickness - 0.5) best = { thickness, left: swapped ? q : p, right: swapped ? p : q };
  };
  nearestPairs(left, right, (p, q) => take(p, q, false));
  nearestPairs(right, left, (p, q) => take(p, q, true));
  return best ? inTheMiddle(best, left, right) : null;
}

/** The two faces as lines upwards, cut off where the back is rounded. */
function faceLines(points: readonly Point[], { height, backRadius }: Milled) {
  const top = points.findIndex((p) => p.y === height);
  // Counter-clockwise from the left end of the back: up the right face, then down the left one.
  const right = points.slice(1, top + 1);
  const left = [...points.slice(top + 1), points[0]].reverse();
  return { left: above(left, backRadius), right: above(right, backRadius) };
}

function above(line: readonly Point[], height: number): Point[] {
  const first = line.findIndex((p) => p.y > height);
  if (first <= 0) return [...line];
  const [a, b] = [line[first - 1], line[first]];
  const at = { x: a.x + ((b.x - a.x) * (height - a.y)) / (b.y - a.y), y: height };
  return a.y === height ? line.slice(first - 1) : [at, ...line.slice(first)];
}

/** Every vertex of one line with the nearest point of every edge of the other. */
function nearestPairs(from: readonly Point[], to: readonly Point[], visit: (p: Point, q: Point) => void): void {
  for (const p of from) for (let i = 1; i < to.length; i++) visit(p, nearestOnSegment(p, to[i - 1], to[i]));
}

/** Where a whole stretch is as thin, the middle of it, so that the mark does not sit in a corner. */
function inTheMiddle(web: ThinnestWeb, left: readonly Point[], right: readonly Point[]): ThinnestWeb {
  if (Math.abs(web.left.y - web.right.y) > 1) return web;
  const level = [...left, ...right].map((p) => p.y).filter((y) => isThinAt(web, left, right, y));
  const [from, to] = [Math.min(web.left.y, ...level), Math.max(web.left.y, ...level)];
  const y = isThinAt(web, left, right, (from + to) / 2) ? (from + to) / 2 : web.left.y;
  return { ...web, left: { x: web.left.x, y }, right: { x: web.right.x, y } };
}

/** Whether both ends of the web, moved to another height, still lie on their lines. */
function isThinAt(web: ThinnestWeb, left: readonly Point[], right: readonly Point[], y: number): boolean {
  return isOn(left, { x: web.left.x, y }) && isOn(right, { x: web.right.x, y });
}

function isOn(line: readonly Point[], p: Point): boolean {
  return line.some((b, i) => {
    if (i === 0) return false;
    const q = nearestOnSegment(p, line[i - 1], b);
    return Math.abs(q.x - p.x) < 1 && Math.abs(q.y - p.y) < 1;
  });
}
