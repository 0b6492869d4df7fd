import { describe, expect, test } from 'vitest';
import { containsBlank, containsExactly, pointOf, rationalOf } from '../../../src/fit/contain-exactly.ts';
import { MAX_COORDINATE, type Point } from '../../../src/geom/point.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

const whole = (x: number, y: number) => ({ x: BigInt(x), y: BigInt(y), d: 1n });
const holds = (opening: readonly Point[] | (readonly Point[])[], blank: Ring, x: number, y: number) =>
  containsExactly(Array.isArray(opening[0]) ? (opening as Point[][]) : [opening as Point[]], blank, whole(x, y));

const square = boxOfMm(2, 2);

describe('exact containment', () => {
  test('a shape is within itself, and not a nanometre from there', () => {
    expect(holds(square, square, 0, 0)).toBe(true);
    for (const [x, y] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ])
      expect(holds(square, square, x, y)).toBe(false);
  });

  test('touching along an edge and in a corner is allowed', () => {
    const small = boxOfMm(1, 1);
    expect(holds(square, small, 0, 500_000)).toBe(true);
    expect(holds(square, small, 1_000_000, 1_000_000)).toBe(true);
    expect(holds(square, small, 1_000_001, 500_000)).toBe(false);
  });

  test('far outside, and round the opening, is not inside', () => {
    expect(holds(square, boxOfMm(1, 1), 9_000_000, 0)).toBe(false);
    expect(holds(boxOfMm(1, 1), square, -500_000, -500_000)).toBe(false);
  });

  test('corners all inside, but a ward stands through an edge', () => {
    const warded = ringOfMm([
      [0, 0],
      [4, 0],
      [4, 4],
      [2.1, 4],
      [2, 1],
      [1.9, 4],
      [0, 4],
    ]);
    const bar = boxOfMm(3, 1);
    expect(holds(warded, bar, 500_000, 0)).toBe(true);
    expect(holds(warded, bar, 500_000, 1)).toBe(false);
  });

  test('an edge from vertex to vertex of the opening across its outside', () => {
    const notched = ringOfMm([
      [0, 0],
      [4, 0],
      [4, 4],
      [3, 4],
      [2, 3],
      [1, 4],
      [0, 4],
    ]);
    const lid = ringOfMm([
      [1, 4],
      [2, 2],
      [3, 4],
    ]);
    expect(holds(notched, lid, 0, 0)).toBe(false);
    const wedge = ringOfMm([
      [1, 4],
      [1, 1],
      [3, 1],
      [3, 4],
      [2, 3],
    ]);
    expect(holds(notched, wedge, 0, 0)).toBe(true);
  });

  test('between nanometres: a third of one makes the difference', () => {
    const slope = soundRing([
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 0, y: 10 },
    ]);
    const point = soundRing([
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 0, y: 1 },
    ]);
    expect(containsExactly([slope], point, { x: 3n, y: 26n, d: 3n })).toBe(true);
    expect(containsExactly([slope], point, { x: 3_000_000n, y: 26_000_001n, d: 3_000_000n })).toBe(false);
    expect(containsExactly([slope], point, { x: 3_000_001n, y: 26_000_000n, d: 3_000_000n })).toBe(false);
  });

  test('islands: beside one, on its shore, over it, round it', () => {
    const island = ringOfMm([
      [3, 3],
      [3, 4],
      [4, 4],
      [4, 3],
    ]);
    const boundaries = [boxOfMm(8, 8), [...island].reverse()];
    expect(holds(boundaries, square, 1_000_000, 3_000_000)).toBe(true);
    expect(holds(boundaries, square, 1_000_001, 3_000_000)).toBe(false);
    expect(holds(boundaries, square, 2_500_000, 2_500_000)).toBe(false);
    const fork = ringOfMm([
      [0, 0],
      [3, 0],
      [3, 3],
      [2, 3],
      [2, 1],
      [1, 1],
      [1, 3],
      [0, 3],
    ]);
    expect(holds(boundaries, fork, 2_000_000, 2_000_000)).toBe(true);
    expect(holds(boundaries, fork, 2_000_000, 2_000_001)).toBe(false);
  });

  test('an island exactly as large as the blank', () => {
    const island = [...square].reverse().map(({ x, y }) => ({ x: x + 3e6, y: y + 3e6 }));
    expect(holds([boxOfMm(8, 8), island], square, 3_000_000, 3_000_000)).toBe(false);
  });

  test('across the whole accepted square, to the nanometre', () => {
    const M = MAX_COORDINATE;
    const half = soundRing([
      { x: -M, y: -M },
      { x: M, y: -M },
      { x: M, y: M },
    ]);
    const tip = soundRing([
      { x: 0, y: 0 },
      { x: 2, y: 0 },
      { x: 2, y: 2 },
    ]);
    expect(holds(half, tip, 12_345_678, 12_345_678)).toBe(true);
    expect(holds(half, tip, 12_345_678, 12_345_679)).toBe(false);
  });

  test('a blank in parts must be inside with every part', () => {
    const parts = [boxOfMm(1, 1), soundRing(boxOfMm(1, 1).map(({ x, y }) => ({ x: x + 5e6, y })))];
    expect(containsBlank([boxOfMm(6, 1)], parts, whole(0, 0))).toBe(true);
    expect(containsBlank([boxOfMm(5.999999, 1)], parts, whole(0, 0))).toBe(false);
  });
});

describe('rational placements', () => {
  test('doubles go there and back to a millionth of a nanometre', () => {
    for (const t of [
      { x: 0, y: -1 },
      { x: 93_123_456.75, y: -0.3333333 },
      { x: -1e-3, y: 94_906_262 },
    ]) {
      const back = pointOf(rationalOf(t));
      expect(Math.abs(back.x - t.x)).toBeLessThan(1e-6);
      expect(Math.abs(back.y - t.y)).toBeLessThan(1e-6);
    }
  });

  test('a fraction is rounded to the nearest double', () => {
    expect(pointOf({ x: -7n, y: 2n, d: 3n })).toEqual({ x: -7 / 3, y: 2 / 3 });
  });
});
