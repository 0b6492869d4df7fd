import { expect, test } from 'vitest';
import { fitLeastSquares } from '../../../src/profile/fit-least-squares.ts';

const inBounds = (p: readonly number[]) => [...p];

test('a line through points is that of the textbook: slope and height of the normal equations', () => {
  const points = [
    [0, 1],
    [1, 3],
    [2, 4],
    [3, 4],
  ];
  const { parameters } = fitLeastSquares(
    { residuals: ([a, b]) => points.map(([x, y]) => a + b * x - y), clamp: inBounds, steps: [1e-3, 1e-3] },
    [0, 0],
  );
  // n = 4, sum x = 6, sum y = 12, sum xx = 14, sum xy = 23: b = (4 * 23 - 6 * 12) / (4 * 14 - 36) = 1, a = (12 - 6) / 4.
  expect(parameters[0]).toBeCloseTo(1.5, 6);
  expect(parameters[1]).toBeCloseTo(1, 6);
});

test('a curved problem with an exact answer is solved to it: the circle through three points', () => {
  const circle = { x: 3, y: -2, r: 5 };
  const points = [0.3, 2, 4.4].map((a) => [circle.x + circle.r * Math.cos(a), circle.y + circle.r * Math.sin(a)]);
  const found = fitLeastSquares(
    {
      residuals: ([x, y, r]) => points.map(([px, py]) => Math.hypot(px - x, py - y) - r),
      clamp: inBounds,
      steps: [1e-4, 1e-4, 1e-4],
    },
    [0, 0, 1],
  );
  expect(found.parameters[0]).toBeCloseTo(3, 6);
  expect(found.parameters[1]).toBeCloseTo(-2, 6);
  expect(found.parameters[2]).toBeCloseTo(5, 6);
  expect(found.misfit).toBeLessThan(1e-12);
});

test('a bound is kept, and the best within it is found', () => {
  const { parameters } = fitLeastSquares(
    { residuals: ([x]) => [x + 3], clamp: ([x]) => [Math.max(0, x)], steps: [1e-3] },
    [4],
  );
  expect(parameters[0]).toBe(0);
});
