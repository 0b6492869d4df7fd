import { expect, test } from 'vitest';
import { areaMoments } from '../../../src/identify/area-moments.ts';
import { boxOfMm, turned } from '../../kit/shapes.ts';

test('a box: middle, direction of its longer side, and the ratio of its sides', () => {
  const { area, middle, long, slender } = areaMoments(boxOfMm(2, 8));
  expect(area).toBe(16e12);
  expect(middle).toEqual({ x: 1e6, y: 4e6 });
  expect(Math.abs(long)).toBeCloseTo(Math.PI / 2, 12);
  expect(slender).toBeCloseTo(2 / 8, 12);
});

test.each([10, 45, 80, -30])('turned by %i degrees, its direction turns along', (degrees) => {
  const { long, slender } = areaMoments(turned(boxOfMm(8, 2), degrees));
  expect(long).toBeCloseTo((degrees * Math.PI) / 180, 6);
  expect(slender).toBeCloseTo(0.25, 6);
});

test('far from the origin no digits are lost', () => {
  const far = boxOfMm(2, 8).map(({ x, y }) => ({ x: x + 40e6, y: y - 40e6 }));
  expect(areaMoments(far).slender).toBeCloseTo(0.25, 10);
});
