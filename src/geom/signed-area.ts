import type { Point } from './point.ts';

/**
 * Area enclosed by a closed polyline, in square nanometres: positive when counter-clockwise.
 *
 * The sum runs relative to the first vertex, so that a small outline far from the origin keeps its digits.
 *
 * @source shoelace formula (Green's theorem); P. Bourke, "Calculating the area and centroid of a polygon", 1988.
 */
export function signedArea(points: readonly Point[]): number {
  const origin = points[0];
  let twice = 0;
  for (let i = 1; i + 1 < points.length; i++) {
    const a = points[i];
    const b = points[i + 1];
    twice += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
  }
  return twice / 2;
}
