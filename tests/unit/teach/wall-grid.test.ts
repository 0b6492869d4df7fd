import { expect, test } from 'vitest';
import { type WallCells, wallGrid } from '../../../src/teach/wall-grid.ts';

const FACE = { radius: 5, half: 3 };
const CELLS: WallCells = { face: FACE, leastWidth: 114, leastScale: 9, beside: 16, rest: 35, under: () => 72 };
const ROOM = { width: 1390, height: 620 };

test('every cell lies in the room, and its plug and words in the cell', () => {
  for (const count of [1, 3, 10, 24, 60, 200]) {
    const { columns, places, width, height, scale } = wallGrid(count, ROOM, CELLS);
    const rows = Math.ceil(Math.min(count, places) / columns);
    expect(width).toBeGreaterThanOrEqual(CELLS.leastWidth);
    expect(columns * width).toBeLessThanOrEqual(ROOM.width + 1e-9);
    expect(rows * height).toBeLessThanOrEqual(ROOM.height + 1e-9);
    expect(2 * FACE.half * scale + CELLS.beside).toBeLessThanOrEqual(width + 1e-9);
    expect(2 * FACE.radius * scale + CELLS.under(width)).toBeLessThanOrEqual(height + 1e-9);
  }
});

test('few plugs are all shown and large; too many are not made too small to be told apart', () => {
  const three = wallGrid(3, ROOM, CELLS);
  expect([three.columns, three.places]).toEqual([3, 3]);
  expect(three.scale).toBeGreaterThan(45);
  const many = wallGrid(200, ROOM, CELLS);
  expect(many.places).toBeLessThan(200);
  expect(many.scale).toBeGreaterThanOrEqual(8);
});

test('nine stand in two rows on a screen and on a broader slide of paper, where one row were a little larger', () => {
  const paper: WallCells = { face: FACE, leastWidth: 31, leastScale: 1.8, beside: 2, rest: 6, under: () => 17.8 };
  const slide = { width: 304, height: 120 };
  expect(wallGrid(9, ROOM, CELLS).columns).toBe(5);
  expect(wallGrid(9, slide, paper).columns).toBe(5);
  // Where two rows cost more than a quarter of the size there is one.
  expect(wallGrid(9, { ...slide, height: 90 }, paper).columns).toBe(9);
});
