import type { Point } from '../geom/point.ts';

/** What an outline weighs, where its middle is, and how it is stretched. */
export interface AreaMoments {
  /** Square nanometres, positive for a counter-clockwise outline. */
  readonly area: number;
  readonly middle: Point;
  /** The direction in which it is longest, radians from the x axis, from minus to plus a quarter turn. */
  readonly long: number;
  /** The spread across that direction over the spread along it: near 0 a needle, 1 as long as wide. */
  readonly slender: number;
}

/**
 * Area, middle and principal directions of a polygon.
 *
 * @source Green's theorem for moments of area; C. Steger, "On the calculation of arbitrary moments of polygons", 1996
 *   (from memory).
 * @check tests/unit/identify/area-moments.test.ts
 */
export function areaMoments(ring: readonly Point[]): AreaMoments {
  const origin = ring[0];
  const sums = { area: 0, x: 0, y: 0, xx: 0, xy: 0, yy: 0 };
  for (const [i, p] of ring.entries()) {
    const q = ring[(i + 1) % ring.length];
    const [ax, ay, bx, by] = [p.x - origin.x, p.y - origin.y, q.x - origin.x, q.y - origin.y];
    const cross = ax * by - bx * ay;
    sums.area += cross / 2;
    sums.x += (cross * (ax + bx)) / 6;
    sums.y += (cross * (ay + by)) / 6;
    sums.xx += (cross * (ax * ax + ax * bx + bx * bx)) / 12;
    sums.yy += (cross * (ay * ay + ay * by + by * by)) / 12;
    sums.xy += (cross * (2 * ax * ay + ax * by + bx * ay + 2 * bx * by)) / 24;
  }
  const [mx, my] = [sums.x / sums.area, sums.y / sums.area];
  const [xx, xy, yy] = [sums.xx / sums.area - mx * mx, sums.xy / sums.area - mx * my, sums.yy / sums.area - my * my];
  const apart = Math.hypot((xx - yy) / 2, xy);
  const mean = (xx + yy) / 2;
  return {
    area: sums.area,
    middle: { x: origin.x + mx, y: origin.y + my },
    long: Math.atan2(2 * xy, xx - yy) / 2,
    slender: Math.sqrt(Math.max(0, mean - apart) / (mean + apart)),
  };
}
