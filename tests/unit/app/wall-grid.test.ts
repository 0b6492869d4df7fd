import { expect, test } from 'vitest';
import { wallGrid } from '../../../src/app/panels/teach/slide/wall-grid.ts';

const FACE = { radius: 5, half: 3 };
const ROOM = { width: 1390, height: 620 };

test('every cell lies in the room, and its type is not smaller than asked for', () => {
  for (const count of [1, 3, 10, 24, 60, 200]) {
    const { columns, places, pictureWidth, pictureHeight, pxPerMm, type } = wallGrid(count, ROOM, FACE, 22);
    const rows = Math.ceil(Math.min(count, places) / columns);
    expect(columns * pictureWidth).toBeLessThanOrEqual(ROOM.width);
    expect(rows * (pictureHeight + 2 * 22 * 1.2)).toBeLessThanOrEqual(ROOM.height);
    expect(2 * FACE.half * pxPerMm).toBeLessThanOrEqual(pictureWidth);
    expect(2 * FACE.radius * pxPerMm).toBeLessThanOrEqual(pictureHeight);
    expect(type).toBe(22);
  }
});

test('few plugs are all shown and large; too many are not made too small to be told apart', () => {
  const three = wallGrid(3, ROOM, FACE, 22);
  expect([three.columns, three.places]).toEqual([3, 3]);
  expect(three.pxPerMm).toBeGreaterThan(45);
  const many = wallGrid(200, ROOM, FACE, 22);
  expect(many.places).toBeLessThan(200);
  expect(many.pxPerMm).toBeGreaterThanOrEqual(8);
});
