import { expect, test } from 'vitest';
import { indentsOf } from '../../../src/passage/indents.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

/*
 * Outlines drawn for these tests: side, heights and depth are read off the corners.
 */

const told = (ring: Parameters<typeof indentsOf>[0]) =>
  indentsOf(ring).map(({ side, from, to, depth }) => ({ side, from, to, depth }));

test('a plain slot, a rounded back and a step up to the top have no indent', () => {
  expect(told(boxOfMm(2, 8))).toEqual([]);
  const stepped = ringOfMm([
    [0.5, 0],
    [1.5, 0],
    [2, 0.5],
    [2, 8],
    [0.6, 8],
    [0.6, 5],
    [0, 5],
    [0, 0.5],
  ]);
  expect(told(stepped)).toEqual([]);
});

test('a square ward on each side is told with its heights and depth, the left side first', () => {
  const ring = ringOfMm([
    [0, 0],
    [2, 0],
    [2, 4],
    [1.4, 4],
    [1.4, 5],
    [2, 5],
    [2, 8],
    [0, 8],
    [0, 3],
    [0.5, 3],
    [0.5, 2],
    [0, 2],
  ]);
  expect(told(ring)).toEqual([
    { side: 'left', from: 2e6, to: 3e6, depth: 0.5e6 },
    { side: 'right', from: 4e6, to: 5e6, depth: 0.6e6 },
  ]);
});

test('two hills down to the wall between them are both told, a small one on the flank of a larger one belongs to that', () => {
  const sides = (...left: [number, number][]) => ringOfMm([[0, 0], [3, 0], [3, 8], [0, 8], ...left]);
  const two = sides([0, 6], [0.8, 5.8], [0.8, 5.2], [0, 4.5], [0.6, 4], [0.6, 3], [0, 2.5]);
  expect(told(two).map(({ depth }) => depth)).toEqual([0.6e6, 0.8e6]);
  const flank = sides([0, 6], [0.8, 5.8], [0.8, 5], [0.2, 4.5], [0.5, 4], [0.5, 3], [0, 2.5]);
  expect(told(flank).map(({ depth }) => depth)).toEqual([0.8e6]);
});

test('what stands in by less than 0.02 mm is none', () => {
  const bump = (depth: number) =>
    told(
      ringOfMm([
        [0, 0],
        [2, 0],
        [2, 8],
        [0, 8],
        [0, 5],
        [depth, 5],
        [depth, 4],
        [0, 4],
      ]),
    );
  expect(bump(0.019)).toEqual([]);
  expect(bump(0.021)).toEqual([{ side: 'left', from: 4e6, to: 5e6, depth: 21_000 }]);
});

test('a lip over an undercut notch is not taken for the blade, even where it is wider than the web beside it', () => {
  const ring = soundRing(
    [
      [0, 0],
      [2360000, 0],
      [2360000, 1481756],
      [960202, 1429952],
      [960202, 2624042],
      [2360000, 2572238],
      [2360000, 8250000],
      [0, 8250000],
      [0, 2723100],
      [450367, 2723100],
      [450367, 1784123],
      [0, 1784123],
    ].map(([x, y]) => ({ x, y })),
  );
  const [left, right] = told(ring);
  expect(left).toEqual({ side: 'left', from: 1784123, to: 2723100, depth: 450367 });
  expect(right.side).toBe('right');
  expect(right.depth).toBe(2360000 - 960202);
});
