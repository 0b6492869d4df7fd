import { expect, test } from 'vitest';
import { seenAs, thumbMatrix } from '../../../src/app/tools/loops-view.ts';

const MM = 1e6;
const LOOP = { width: 2 * MM, height: 8 * MM };
/** Where a place of the loop, in millimetres from the corner of its box, is in a picture of 40 by 52 pixels. */
const seen = (x: number, y: number, seenFrom: 'bow' | 'tip', quarters: 0 | 1 | 2 | 3) => {
  const text = thumbMatrix(LOOP, seenAs({ seenFrom, quarters }), [40, 52], 30);
  const [a, b, c, d, e, f] = text.slice(7, -1).split(' ').map(Number);
  return [a * x + c * y + e, b * x + d * y + f];
};

test('the small picture of a loop is seen as the large one: mirrored from the tip, and turned', () => {
  // 46 pixels are 8 mm; the groove is at the right, near the back.
  const across = (46 / 8) * 0.5;
  expect(seen(1.5, 2, 'bow', 0)[0]).toBeCloseTo(20 + across, 9);
  expect(seen(1.5, 2, 'bow', 0)[1]).toBeCloseTo(26 + (46 / 8) * 2, 9);
  expect(seen(1.5, 2, 'tip', 0)[0]).toBeCloseTo(20 - across, 9);
  expect(seen(1.5, 2, 'tip', 0)[1]).toBeCloseTo(26 + (46 / 8) * 2, 9);
  // A quarter to the left: the top is at the left; it lies, so that 34 pixels are 8 mm.
  expect(seen(1, 8, 'bow', 1)).toEqual([expect.closeTo(3, 9), expect.closeTo(26, 9)]);
  expect(seen(1, 8, 'bow', 2)).toEqual([expect.closeTo(20, 9), expect.closeTo(49, 9)]);
});
