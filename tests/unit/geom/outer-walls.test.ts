import { describe, expect, test } from 'vitest';
import { outerWalls } from '../../../src/geom/outer-walls.ts';

const lengthOf = (walls: Float64Array) => {
  let sum = 0;
  for (let i = 0; i < walls.length; i += 4) sum += Math.hypot(walls[i + 2] - walls[i], walls[i + 3] - walls[i + 1]);
  return sum;
};

const box = (x: number, y: number, w: number, h: number) => [x, y, x + w, y, x + w, y + h, x, y + h];

describe('the boundary of cells that meet', () => {
  test('one cell is its own boundary', () => {
    expect(lengthOf(outerWalls([box(0, 0, 30, 40)]))).toBe(140);
  });

  test('the stretch along which two cells meet is inside, the rest of the longer edge is not', () => {
    // A 40 high and a 10 high cell side by side: 2 x (30 + 20) along, 40 and 10 at the ends, 30 left of the shared side.
    expect(lengthOf(outerWalls([box(0, 0, 30, 40), box(30, 15, 20, 10)]))).toBeCloseTo(180, 9);
  });

  test('a cut through several cells, with rounding across it, leaves no wall', () => {
    const cells = [box(0, 0, 10, 10), box(10 + 1e-9, 0, 10, 4), box(10 - 1e-9, 4, 10, 6), box(0, 10, 20, 5)];
    expect(lengthOf(outerWalls(cells))).toBeCloseTo(70, 6);
  });

  test('cells that only touch in a corner keep all their edges', () => {
    expect(lengthOf(outerWalls([box(0, 0, 10, 10), box(10, 10, 10, 10)]))).toBe(80);
  });

  test('edges of one direction that lie on one line do not cover each other', () => {
    expect(lengthOf(outerWalls([box(0, 0, 10, 10), box(20, 0, 10, 10)]))).toBe(80);
  });
});
