import { describe, expect, test } from 'vitest';
import { searchMaximum } from '../../../src/fit/search-maximum.ts';

const exact = (f: (x: number) => number) => (x: number) => ({ value: f(x), atMost: f(x), detail: x });

describe('the greatest value of a function with a known slope', () => {
  test('is found to within the accuracy, with few looks', () => {
    const wave = (x: number) => Math.sin(3 * x) + 0.3 * Math.cos(11 * x);
    const dense = Array.from({ length: 200_001 }, (_, i) => wave(-2 + (4 * i) / 200_000)).reduce((a, b) =>
      Math.max(a, b),
    );
    const found = searchMaximum(exact(wave), [-2, 2], 6.4, 1e-3);
    expect(found.value).toBeGreaterThan(dense - 1e-3);
    expect(found.bound).toBeGreaterThanOrEqual(dense - 1e-9);
    expect(found.bound - found.value).toBeLessThanOrEqual(1e-3 + 1e-12);
    expect(found.evaluations).toBeLessThan(200);
  });

  test('a narrow peak between equal samples is not missed', () => {
    const peak = (x: number) => Math.max(0, 1 - 50 * Math.abs(x - 0.3137));
    expect(searchMaximum(exact(peak), [-1, 1], 50, 0.01).value).toBeGreaterThan(0.98);
  });

  test('values that may be too low by a stated amount only widen the bound', () => {
    const found = searchMaximum((x) => ({ value: -(x * x) - 0.01, atMost: -(x * x), detail: x }), [-1, 1], 2, 0.05);
    expect(found.bound).toBeGreaterThanOrEqual(0);
    expect(found.value).toBeLessThanOrEqual(-0.01);
  });

  test('stops as soon as a value is enough', () => {
    const found = searchMaximum(
      exact((x) => x),
      [-1, 1],
      1,
      1e-9,
      0.5,
    );
    expect(found.value).toBe(1);
    expect(found.evaluations).toBe(3);
  });
});
