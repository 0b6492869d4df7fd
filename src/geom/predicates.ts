import type { Point } from './point.ts';

/**
 * Twice the signed area of the triangle a, b, c: positive when c lies left of the line from a to b.
 *
 * Differences of accepted coordinates stay below 9.5e7, so each product is below 2^53 and exact; the
 * difference of two exact doubles is rounded correctly, hence the sign is always right for whole numbers.
 *
 * @returns square nanometres; 0 exactly when the three points are in line.
 */
export function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** How two closed segments meet. */
export type Meeting = 'apart' | 'crossing' | 'touching' | 'overlapping';

/**
 * How segments a-b and c-d meet: crossing when the interiors cross in one point, touching when an end of one
 * lies on the other, overlapping when they share a length. Exact for whole-nanometre points.
 */
export function meetingOf(a: Point, b: Point, c: Point, d: Point): Meeting {
  const abc = turn(a, b, c);
  const abd = turn(a, b, d);
  if ((abc > 0 && abd > 0) || (abc < 0 && abd < 0)) return 'apart';
  const cda = turn(c, d, a);
  const cdb = turn(c, d, b);
  if ((cda > 0 && cdb > 0) || (cda < 0 && cdb < 0)) return 'apart';
  if (abc === 0 && abd === 0) return meetingInLine(a, b, c, d);
  return abc !== 0 && abd !== 0 && cda !== 0 && cdb !== 0 ? 'crossing' : 'touching';
}

/** {@link meetingOf} for four points in one line: compares along the longer axis. */
function meetingInLine(a: Point, b: Point, c: Point, d: Point): Meeting {
  const alongX = Math.abs(b.x - a.x) >= Math.abs(b.y - a.y);
  const [a1, b1, c1, d1] = alongX ? [a.x, b.x, c.x, d.x] : [a.y, b.y, c.y, d.y];
  const shared = Math.min(Math.max(a1, b1), Math.max(c1, d1)) - Math.max(Math.min(a1, b1), Math.min(c1, d1));
  if (shared < 0) return 'apart';
  return shared === 0 ? 'touching' : 'overlapping';
}

/** Where the lines through a-b and c-d cross; the segments must not be parallel. Rounded like any double. */
export function crossingPoint(a: Point, b: Point, c: Point, d: Point): Point {
  const along = turn(c, d, a) / (turn(c, d, a) - turn(c, d, b));
  return { x: a.x + along * (b.x - a.x), y: a.y + along * (b.y - a.y) };
}
