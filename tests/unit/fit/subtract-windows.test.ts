import { describe, expect, test } from 'vitest';
import { groupCells } from '../../../src/fit/group-cells.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { subtractWindows, windowOf } from '../../../src/fit/subtract-windows.ts';
import { areaOf, boxOfCells, cellHolds } from '../../../src/geom/convex-cell.ts';
import { MAX_COORDINATE } from '../../../src/geom/point.ts';
import type { Region } from '../../../src/geom/region.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

const cellsOf = (opening: Ring | Region, blank: Ring) => subtractWindows(prepareOpening(opening), prepareBlank(blank));
const areaOfAll = (cells: readonly (readonly number[])[]) => cells.reduce((sum, cell) => sum + areaOf(cell), 0);
const MM2 = 1e12;

describe('the window', () => {
  const windowFor = (opening: Ring, blank: Ring) => windowOf(prepareOpening(opening), prepareBlank(blank));

  test('is what the boxes leave', () => {
    expect(windowFor(boxOfMm(2.1, 8.5), boxOfMm(2, 8.4))).toEqual({ minX: 0, minY: 0, maxX: 100_000, maxY: 100_000 });
  });

  test('has no width where the boxes are equally wide, and is none where the blank is a nanometre wider', () => {
    expect(windowFor(boxOfMm(2, 8.5), boxOfMm(2, 8.4))).toMatchObject({ minX: 0, maxX: 0 });
    expect(windowFor(boxOfMm(2, 8.5), boxOfMm(2.000001, 8.4))).toBeNull();
  });
});

describe('the inner-fit region as cells', () => {
  test('a rectangle in a rectangle leaves the rectangle of the differences', () => {
    const cells = cellsOf(boxOfMm(2.1, 8.5), boxOfMm(2, 8.2));
    expect(boxOfCells(cells)).toEqual({ minX: 0, minY: 0, maxX: 100_000, maxY: 300_000 });
    expect(areaOfAll(cells)).toBeCloseTo(3e10, 0);
  });

  test('an L leaves an L', () => {
    const opening = ringOfMm([
      [0, 0],
      [6, 0],
      [6, 2],
      [2, 2],
      [2, 6],
      [0, 6],
    ]);
    const cells = cellsOf(opening, boxOfMm(1, 1));
    expect(areaOfAll(cells) / MM2).toBeCloseTo(9, 6);
    expect(cells.some((cell) => cellHolds(cell, 3e6, 3e6))).toBe(false);
    expect(cells.some((cell) => cellHolds(cell, 0.5e6, 4.5e6))).toBe(true);
  });

  test('chambers with a neck between that is too low: one piece each, nothing in the neck', () => {
    const opening = ringOfMm([
      [0, 0],
      [3, 0],
      [3, 1],
      [5, 1],
      [5, 0],
      [9, 0],
      [9, 3.2],
      [5, 3.2],
      [5, 2],
      [3, 2],
      [3, 3],
      [0, 3],
    ]);
    const groups = groupCells(cellsOf(opening, boxOfMm(2, 2)));
    const areas = groups.map(areaOfAll).sort((a, b) => a - b);
    expect(areas.map((area) => area / MM2)).toEqual([expect.closeTo(1, 6), expect.closeTo(2.4, 6)]);
  });

  test('an island leaves a hole round it, and the blank may stand round the island', () => {
    const ring = (low: number, high: number) =>
      ringOfMm([
        [low, low],
        [high, low],
        [high, high],
        [low, high],
      ]);
    const opening: Region = [{ outer: ring(0, 6), holes: [[...ring(2.5, 3.5)].reverse()] }];
    expect(areaOfAll(cellsOf(opening, boxOfMm(1, 1))) / MM2).toBeCloseTo(21, 6);
    const fork = ringOfMm([
      [0, 0],
      [3, 0],
      [3, 3],
      [2.2, 3],
      [2.2, 0.8],
      [0.8, 0.8],
      [0.8, 3],
      [0, 3],
    ]);
    const cells = cellsOf(opening, fork);
    expect(cells.some((cell) => cellHolds(cell, 1.5e6, 1.6e6))).toBe(true);
    expect(cells.some((cell) => cellHolds(cell, 1.5e6, 1.8e6))).toBe(false);
  });

  test('an island inside the blank is a collision though no edges cross', () => {
    const outer = boxOfMm(6, 6);
    const speck = [
      { x: 3_000_000, y: 3_000_000 },
      { x: 3_000_000, y: 3_100_000 },
      { x: 3_100_000, y: 3_000_000 },
    ];
    expect(cellsOf([{ outer, holes: [speck] }], boxOfMm(5.5, 5.5))).toEqual([]);
    expect(cellsOf(outer, boxOfMm(5.5, 5.5))).not.toEqual([]);
  });

  test('a region without area has no cells, though it is not empty', () => {
    expect(cellsOf(boxOfMm(2, 8.5), boxOfMm(2, 8.4))).toEqual([]);
    expect(cellsOf(boxOfMm(2, 8), boxOfMm(2, 8))).toEqual([]);
  });

  test('one nanometre of room is area', () => {
    expect(areaOfAll(cellsOf(boxOfMm(2.000001, 8.5), boxOfMm(2, 8.4)))).toBeCloseTo(1e5, 3);
  });

  test('the region does not lose digits in opposite corners of the accepted square', () => {
    const M = MAX_COORDINATE;
    const at = (x: number, y: number, w: number, h: number) =>
      soundRing([
        { x, y },
        { x: x + w, y },
        { x: x + w, y: y + h },
        { x, y: y + h },
      ]);
    const cells = cellsOf(at(M - 2_000_003, M - 8_000_005, 2_000_003, 8_000_005), at(-M, -M, 2_000_000, 8_000_000));
    expect(areaOfAll(cells)).toBeCloseTo(15, 6);
    expect(boxOfCells(cells)).toEqual({
      minX: 2 * M - 2_000_003,
      minY: 2 * M - 8_000_005,
      maxX: 2 * M - 2_000_000,
      maxY: 2 * M - 8_000_000,
    });
  });

  test('looking only within a box finds what lies there', () => {
    const opening = prepareOpening(boxOfMm(4, 4));
    const within = subtractWindows(opening, prepareBlank(boxOfMm(1, 1)), { minX: 0, minY: 0, maxX: 1e6, maxY: 1e6 });
    expect(areaOfAll(within) / MM2).toBeCloseTo(1, 5);
  });
});

describe('cells of one piece', () => {
  test('are found together though slivers between them were left out', () => {
    const near = [0, 0, 10, 0, 10, 10, 0, 10];
    const next = near.map((c, i) => (i % 2 === 0 ? c + 10.01 : c));
    const far = near.map((c, i) => (i % 2 === 0 ? c + 40 : c));
    expect(
      groupCells([near, far, next])
        .map((group) => group.length)
        .sort(),
    ).toEqual([1, 2]);
  });

  test('cells that meet in a corner are one piece', () => {
    const a = [0, 0, 10, 0, 10, 10, 0, 10];
    expect(groupCells([a, a.map((c) => c + 10)])).toHaveLength(1);
    expect(groupCells([a, a.map((c) => c + 10.5)])).toHaveLength(2);
  });

  test('a cell that joins two groups makes them one', () => {
    const at = (x: number) => [x, 0, x + 10, 0, x + 10, 10, x, 10];
    expect(groupCells([at(0), at(20), at(10)])).toHaveLength(1);
  });
});
