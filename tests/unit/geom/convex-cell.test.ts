import { describe, expect, test } from 'vitest';
import {
  areaOf,
  boxOfCells,
  type ConvexCell,
  cellHolds,
  cellOfBox,
  centroidOf,
  cutCell,
  middleOf,
  thicknessOf,
} from '../../../src/geom/convex-cell.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';

const square = cellOfBox({ minX: 0, minY: 0, maxX: 10, maxY: 10 });

/** Area by summing over the vertices: not the routine under test. */
function shoelace(cell: ConvexCell): number {
  let twice = 0;
  for (let i = 0; i < cell.length; i += 2) {
    const k = (i + 2) % cell.length;
    twice += cell[i] * cell[k + 1] - cell[k] * cell[i + 1];
  }
  return twice / 2;
}

function isConvex(cell: ConvexCell): boolean {
  const n = cell.length;
  return Array.from({ length: n / 2 }, (_, v) => 2 * v).every((i) => {
    const [j, k] = [(i + 2) % n, (i + 4) % n];
    return (
      (cell[j] - cell[i]) * (cell[k + 1] - cell[j + 1]) - (cell[j + 1] - cell[i + 1]) * (cell[k] - cell[j]) > -1e-6
    );
  });
}

describe('cutting a cell', () => {
  test('a line across leaves a part on either side', () => {
    const { above, below } = cutCell(square, 1, 0, 4, 0);
    expect(above && shoelace(above)).toBe(60);
    expect(below && shoelace(below)).toBe(40);
  });

  test('a line that misses leaves the whole cell on its own side', () => {
    expect(cutCell(square, 1, 0, 11, 0)).toEqual({ above: null, below: square });
    expect(cutCell(square, 0, 1, -1, 0)).toEqual({ above: square, below: null });
  });

  test('a line along an edge or through a corner cuts nothing off', () => {
    expect(cutCell(square, 1, 0, 10, 0).above).toBeNull();
    expect(cutCell(square, 1, 1, 20, 0).above).toBeNull();
    expect(cutCell(square, 1, 0, 10, 0).below).toEqual(square);
  });

  test('a diagonal goes through two corners without new vertices', () => {
    const { above, below } = cutCell(square, -1, 1, 0, 0);
    expect(above).toHaveLength(6);
    expect(below).toHaveLength(6);
  });

  test('no part thinner than the slack is made', () => {
    expect(cutCell(square, 1, 0, 9.9, 0.2).above).toBeNull();
    expect(cutCell(square, 1, 0, 9.9, 0.05).above).not.toBeNull();
    expect(cutCell(square, 1, 0, 0.1, 0.2).below).toBeNull();
  });

  test('random cuts conserve area, stay convex and stay on their side', () => {
    const random = randomNumbers(3);
    let cells: ConvexCell[] = [cellOfBox({ minX: 9e7, minY: -9e7, maxX: 9e7 + 1e5, maxY: -9e7 + 1e5 })];
    for (let cut = 0; cut < 40; cut++) {
      const [nx, ny] = [random.between(-1, 1), random.between(-1, 1)];
      const at = { x: 9e7 + random.between(0, 1e5), y: -9e7 + random.between(0, 1e5) };
      const level = nx * at.x + ny * at.y;
      cells = cells.flatMap((cell) => {
        const { above, below } = cutCell(cell, nx, ny, level, 1e-4);
        for (const [part, sign] of [
          [above, 1],
          [below, -1],
        ] as const)
          for (let i = 0; part && i < part.length; i += 2)
            expect(sign * (nx * part[i] + ny * part[i + 1] - level)).toBeGreaterThan(-1e-3);
        return [above, below].filter((part) => part !== null);
      });
    }
    expect(cells.length).toBeGreaterThan(200);
    expect(cells.every(isConvex)).toBe(true);
    const sum = cells.reduce((total, cell) => total + areaOf(cell), 0);
    expect(Math.abs(sum - 1e10)).toBeLessThan(1e3);
  });
});

describe('measures of a cell', () => {
  const triangle: ConvexCell = [0, 0, 6, 0, 0, 3];

  test('area, and the box round several cells', () => {
    expect(areaOf(triangle)).toBe(9);
    expect(areaOf(square)).toBe(100);
    expect(boxOfCells([triangle, square.map((c) => c + 5)])).toEqual({ minX: 0, minY: 0, maxX: 15, maxY: 15 });
  });

  test('thickness of a long strip is its width, of a point 0', () => {
    const strip = cellOfBox({ minX: 0, minY: 0, maxX: 1e6, maxY: 2 });
    expect(thicknessOf(strip)).toBeCloseTo(2, 4);
    expect(thicknessOf([3, 3, 3, 3, 3, 3])).toBe(0);
  });

  test('the middle lies inside; the centroid is the centre of area, not of the vertices', () => {
    expect(middleOf(triangle)).toEqual({ x: 2, y: 1 });
    const kite: ConvexCell = [0, 0, 4, -1, 5, 0, 4, 1];
    const { x, y } = centroidOf([kite]);
    expect(x).toBeCloseTo(3, 9);
    expect(y).toBeCloseTo(0, 9);
    const two = centroidOf([square, cellOfBox({ minX: 10, minY: 0, maxX: 30, maxY: 10 })]);
    expect(two.x).toBeCloseTo(15, 9);
    expect(two.y).toBeCloseTo(5, 9);
  });

  test('a point on the boundary belongs to the cell, one a hundredth of a nanometre outside does not', () => {
    expect(cellHolds(triangle, 3, 0)).toBe(true);
    expect(cellHolds(triangle, 0, 0)).toBe(true);
    expect(cellHolds(triangle, 2, 1)).toBe(true);
    expect(cellHolds(triangle, 3, -0.01)).toBe(false);
    expect(cellHolds(triangle, 4, 1.1)).toBe(false);
  });
});
