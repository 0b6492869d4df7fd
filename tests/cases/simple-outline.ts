import type { Point } from '../../src/geom/point.ts';

/**
 * Whether no two edges of a closed outline meet except neighbours at their shared end. Every pair of edges is
 * looked at; exact for whole numbers whose differences stay below 6.7e7.
 */
export function isSimpleOutline(outline: readonly Point[]): boolean {
  const count = outline.length;
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      if (edgesClash(outline, i, j)) return false;
    }
  }
  return count >= 3;
}

function edgesClash(outline: readonly Point[], i: number, j: number): boolean {
  const count = outline.length;
  const [a, b] = [outline[i], outline[(i + 1) % count]];
  const [c, d] = [outline[j], outline[(j + 1) % count]];
  if ((j + 1) % count === i) return foldsBack(c, d, b);
  if (j === i + 1) return foldsBack(a, b, d);
  return segmentsMeet(a, b, c, d);
}

/** Two edges from `before` over `at` to `after` lie on each other, or one of them has no length. */
function foldsBack(before: Point, at: Point, after: Point): boolean {
  const ahead = (at.x - before.x) * (after.x - at.x) + (at.y - before.y) * (after.y - at.y);
  return turn(before, at, after) === 0 && ahead <= 0;
}

function segmentsMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) return false;
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false;
  return turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0;
}

/** -1, 0 or 1: right turn, straight, left turn. */
function turn(a: Point, b: Point, c: Point): number {
  return Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
}
