import { expect, test } from 'vitest';
import { heightAt, spareOf, tallestOf, thicknessAt, uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { boxOfMm, ringOfMm, wardedKeyway } from '../../kit/shapes.ts';

const MM = 1e6;
const knotsMm = (ring: ReturnType<typeof boxOfMm>) =>
  uprightCurve('k', ring).knots.map(({ height, thickness }) => [height / MM, thickness / MM]);

test('a plain slot lets its own width pass at every height', () => {
  const curve = uprightCurve('k', boxOfMm(2, 8));
  expect(knotsMm(boxOfMm(2, 8))).toEqual([
    [0, 2],
    [8, 2],
  ]);
  expect(curve.accuracy).toBe(0);
  expect(thicknessAt(curve, 8 * MM)).toBe(2 * MM);
  expect(thicknessAt(curve, 8 * MM + 1)).toBe(0);
  expect(tallestOf(curve)).toBe(8 * MM);
});

test('at a ward the curve jumps, and the greater thickness belongs to the height of the jump', () => {
  const curve = uprightCurve('k', wardedKeyway(0.7));
  expect(knotsMm(wardedKeyway(0.7))).toEqual([
    [0, 2.1],
    [4.6, 2.1],
    [4.6, 1.4],
    [8.5, 1.4],
  ]);
  expect(thicknessAt(curve, 4.6 * MM)).toBe(2.1 * MM);
  expect(thicknessAt(curve, 4.6 * MM + 1)).toBe(1.4 * MM);
});

test('spare thickness is 0 in contact and below 0 beyond', () => {
  const curve = uprightCurve('k', wardedKeyway(0.7));
  expect(spareOf(curve, { thickness: 1.4 * MM, height: 6 * MM })).toBe(0);
  expect(spareOf(curve, { thickness: 1.5 * MM, height: 6 * MM })).toBe(-0.1 * MM);
  expect(spareOf(curve, { thickness: 0.5 * MM, height: 9 * MM })).toBe(-0.5 * MM);
});

test('the tallest strip of a thickness, closed at the jump', () => {
  const curve = uprightCurve('k', wardedKeyway(0.7));
  expect(heightAt(curve, 2.1 * MM)).toBe(4.6 * MM);
  expect(heightAt(curve, 1.4 * MM)).toBe(8.5 * MM);
  expect(heightAt(curve, 1.4 * MM + 1)).toBe(4.6 * MM);
  expect(heightAt(curve, 2.1 * MM + 1)).toBeNull();
  const slope = uprightCurve('k', ringOfMm([[0, 0], [4, 0], [0, 8]])); // biome-ignore format: one triangle
  expect(heightAt(slope, 1 * MM)).toBeCloseTo(6 * MM, 3);
});

test('two wards that face each other leave what is between them, wards one above the other too', () => {
  const facing = ringOfMm([
    [0, 0],
    [2, 0],
    [2, 3],
    [1.5, 3],
    [1.5, 4],
    [2, 4],
    [2, 8],
    [0, 8],
    [0, 6],
    [0.4, 6],
    [0.4, 5],
    [0, 5],
  ]);
  // Below the right ward 2 x 3, above the left one 2 x 2; past one ward 1.6 x 4 (4 to 8) or 1.5 x 5; past both 1.1.
  expect(knotsMm(facing)).toEqual([
    [0, 2],
    [3, 2],
    [3, 1.6],
    [4, 1.6],
    [4, 1.5],
    [5, 1.5],
    [5, 1.1],
    [8, 1.1],
  ]);
});

test('a chamber behind a neck counts: tools go in endwise', () => {
  const dovetail = ringOfMm([
    [1, 0],
    [2, 0],
    [2, 2],
    [3, 2],
    [3, 6],
    [0, 6],
    [0, 2],
    [1, 2],
  ]);
  expect(knotsMm(dovetail)).toEqual([
    [0, 3],
    [4, 3],
    [4, 1],
    [6, 1],
  ]);
});

test('two legs part: a strip stands in one of them or above both', () => {
  // A bar 3 x 2 on two legs, 1 x 4 at the left and 0.5 x 6 at the right.
  const fork = ringOfMm([
    [0, 2],
    [1, 2],
    [1, 6],
    [2.5, 6],
    [2.5, 0],
    [3, 0],
    [3, 8],
    [0, 8],
  ]);
  expect(knotsMm(fork)).toEqual([
    [0, 3],
    [2, 3],
    [2, 1],
    [6, 1],
    [6, 0.5],
    [8, 0.5],
  ]);
});

test('slanting walls are followed exactly, not by steps', () => {
  const trapezoid = ringOfMm([
    [0, 0],
    [3, 0],
    [2, 6],
    [1, 6],
  ]);
  // At height h from the floor the width is 3 - h / 3; a strip of height h stands on the floor.
  expect(knotsMm(trapezoid)).toEqual([
    [0, 3],
    [6, 1],
  ]);
});
