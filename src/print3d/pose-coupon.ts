import type { Placement } from '../fit/fit.ts';
import { NM_PER_MM } from '../geom/point.ts';
import type { CouponFrame, OpeningFrame } from './display-set.ts';

/** A rigid motion as sixteen numbers, column by column; millimetres. */
export type Pose = readonly number[];

/**
 * The motion that brings a coupon from where it is in its own part to where it is in the block's part: half a turn
 * about x, so that the tip leads into the opening, and moved so that the section lies at its placement.
 *
 * @param placement of the blank in the opening, nanometres of the real sections.
 * @param inserted how far the tip is past the front of the block, millimetres; the blade's length brings the grip to it,
 *   less than 0 holds the coupon before it.
 * @check tests/unit/print3d/pose-coupon.test.ts
 */
export function poseCoupon(
  coupon: CouponFrame,
  opening: OpeningFrame,
  placement: Placement,
  scale: number,
  inserted: number,
): Pose {
  const { x, y, tilt } = placement;
  const [cos, sin] = [Math.cos(tilt), Math.sin(tilt)];
  const [u, v, w] = coupon.at;
  // Part (X, Y, Z) is section (X - u, v - Y) at height Z - w above the shoulder.
  const right = opening.at[0] + (x / NM_PER_MM) * scale - cos * u - sin * v;
  const up = opening.at[1] + (y / NM_PER_MM) * scale - sin * u + cos * v;
  const out = opening.at[2] + w + coupon.bladeLength - inserted;
  return [cos, sin, 0, 0, sin, -cos, 0, 0, 0, 0, -1, 0, right, up, out, 1];
}
