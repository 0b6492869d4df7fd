import { expect, test } from 'vitest';
import { wallLayout } from '../../../src/app/views/wall/wall-layout.ts';

/** About a blade of 2.1 x 8.5 mm. */
const face = { radius: 5.1, half: 3.2 };
const LARGE = { width: 954, height: 740 };
const SMALL = { width: 620, height: 560 };

const layout = (count: number, { width, height } = LARGE) => wallLayout(count, width, height, face);

test('ten keyways stand in two rows of five, in both windows, without scrolling', () => {
  for (const size of [LARGE, SMALL]) {
    const { columns, cellHeight } = layout(10, size);
    expect(columns).toBe(5);
    expect(cellHeight * 2).toBeLessThanOrEqual(size.height);
  }
});

test('one keyway fills the wall, three stand in a row', () => {
  expect(layout(1).columns).toBe(1);
  expect(layout(1).pxPerMm).toBeGreaterThan(50);
  expect(layout(3).columns).toBe(3);
});

test('large plugs stand clear of the lines of their cells and of the corner marks of the picked one', () => {
  for (const count of [1, 2, 3])
    for (const size of [LARGE, SMALL]) {
      const { columns, pxPerMm } = layout(count, size);
      // A corner mark ends 7 pixels from the line.
      expect((size.width / columns - 2 * face.half * pxPerMm) / 2).toBeGreaterThanOrEqual(7 + 3);
    }
});

test('sixty-four keep a readable size and scroll', () => {
  const { columns, cellHeight, pxPerMm, type } = layout(64);
  expect(pxPerMm).toBeGreaterThanOrEqual(11);
  expect(type.margin).toBeGreaterThanOrEqual(14);
  expect(Math.ceil(64 / columns) * cellHeight).toBeGreaterThan(LARGE.height);
});

test('a picture never outgrows its cell, whatever the window', () => {
  for (let count = 1; count <= 70; count++)
    for (const size of [LARGE, SMALL, { width: 300, height: 200 }]) {
      const { columns, pxPerMm, pictureHeight, cellHeight } = layout(count, size);
      expect(pxPerMm * 2 * face.half).toBeLessThanOrEqual(size.width / columns);
      expect(pictureHeight).toBeLessThanOrEqual(cellHeight);
      expect(pxPerMm * 2 * face.radius).toBeLessThanOrEqual(pictureHeight);
    }
});
