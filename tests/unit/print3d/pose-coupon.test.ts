import { expect, test } from 'vitest';
import { poseCoupon } from '../../../src/print3d/pose-coupon.ts';

const COUPON = { profile: 'b', part: 1, at: [6, 10, 16], bladeLength: 24, gripLength: 16 } as const;
const OPENING = { opening: 'o', part: 0, at: [30, 40, 20], depth: 20 } as const;

function moved(pose: readonly number[], [x, y, z]: readonly number[]): number[] {
  return [0, 1, 2].map((row) => pose[row] * x + pose[4 + row] * y + pose[8 + row] * z + pose[12 + row]);
}

/** A point of the section (right, up, in mm at scale 1) at a height above the shoulder, as the coupon's part has it. */
function inCoupon(right: number, up: number, height: number, scale: number): number[] {
  return [COUPON.at[0] + right * scale, COUPON.at[1] - up * scale, COUPON.at[2] + height];
}

function near(found: readonly number[], wanted: readonly number[]) {
  for (const [i, value] of wanted.entries()) expect(found[i]).toBeCloseTo(value, 9);
}

test('inserted to the shoulder, the section lies on the front as it is drawn and the tip leads', () => {
  const pose = poseCoupon(COUPON, OPENING, { x: 0, y: 0, tilt: 0 }, 4, 24);
  near(moved(pose, inCoupon(1, 2, 0, 4)), [34, 48, 20]);
  near(moved(pose, inCoupon(1, 2, 24, 4)), [34, 48, -4]);
});

test('before it goes in, its tip touches the front', () => {
  const pose = poseCoupon(COUPON, OPENING, { x: 0, y: 0, tilt: 0 }, 4, 0);
  near(moved(pose, inCoupon(0, 0, 24, 4)), [30, 40, 20]);
});

test('a placement moves and turns the section by the same as the fit says', () => {
  const tilt = 0.1;
  const pose = poseCoupon(COUPON, OPENING, { x: 0.25e6, y: -0.5e6, tilt }, 4, 24);
  const [right, up] = [1.5, 3];
  const x = right * Math.cos(tilt) - up * Math.sin(tilt) + 0.25;
  const y = right * Math.sin(tilt) + up * Math.cos(tilt) - 0.5;
  near(moved(pose, inCoupon(right, up, 0, 4)), [30 + 4 * x, 40 + 4 * y, 20]);
});

test('it is a rigid motion that mirrors nothing', () => {
  const p = poseCoupon(COUPON, OPENING, { x: 1, y: 2, tilt: 0.2 }, 4, 5);
  const determinant =
    p[0] * (p[5] * p[10] - p[6] * p[9]) - p[4] * (p[1] * p[10] - p[2] * p[9]) + p[8] * (p[1] * p[6] - p[2] * p[5]);
  expect(determinant).toBeCloseTo(1, 12);
});
