import { containsBlank, pointOf, type RationalPoint } from './contain-exactly.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';

/**
 * Groups the corners of a region without area that are joined by a segment of it, the largest group first: two
 * corners are joined when the middle between them is also a placement, which along one segment means all between.
 */
export function connectCorners(opening: Opening, blank: Blank, corners: readonly RationalPoint[]): RationalPoint[][] {
  const groups: RationalPoint[][] = [];
  for (const corner of corners) {
    const joined = groups.filter((group) => group.some((other) => isJoined(opening, blank, corner, other)));
    for (const group of joined) groups.splice(groups.indexOf(group), 1);
    groups.push([corner, ...joined.flat()]);
  }
  return groups.sort((a, b) => spanOf(b) - spanOf(a));
}

function isJoined(opening: Opening, blank: Blank, a: RationalPoint, b: RationalPoint): boolean {
  const middle = { x: a.x * b.d + b.x * a.d, y: a.y * b.d + b.y * a.d, d: 2n * a.d * b.d };
  return containsBlank(opening.boundaries, blank.rings, middle);
}

function spanOf(group: readonly RationalPoint[]): number {
  const points = group.map(pointOf);
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return Math.max(...xs) - Math.min(...xs) + Math.max(...ys) - Math.min(...ys);
}
