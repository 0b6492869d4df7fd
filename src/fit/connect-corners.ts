import { containsBlank, pointOf, type RationalPoint } from './contain-exactly.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';

/**
 * Groups the corners of a region without area that are joined by a segment of it, the largest group first: two
 * corners are joined when places between them are placements too, which along one segment means all between.
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

/** Whether the two places between the corners are placements; odd places, so that no corner or crossing lies there by chance. */
function isJoined(opening: Opening, blank: Blank, a: RationalPoint, b: RationalPoint): boolean {
  return [between(a, b, 5n, 13n), between(a, b, 7n, 11n)].every((t) =>
    containsBlank(opening.boundaries, blank.rings, t),
  );
}

/** The point part / whole of the way from a to b. */
function between(a: RationalPoint, b: RationalPoint, part: bigint, whole: bigint): RationalPoint {
  const rest = whole - part;
  return {
    x: rest * a.x * b.d + part * b.x * a.d,
    y: rest * a.y * b.d + part * b.y * a.d,
    d: whole * a.d * b.d,
  };
}

function spanOf(group: readonly RationalPoint[]): number {
  const points = group.map(pointOf);
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return Math.max(...xs) - Math.min(...xs) + Math.max(...ys) - Math.min(...ys);
}
