import { describe, expect, test } from 'vitest';
import { rowAfter } from '../../../src/app/panels/rows/row-after.ts';

const SIZES = { row: 40, head: 40 };

/** In a frame that shows five rows. */
const led = (key: string, at: number, count = 20) => rowAfter(key, at, count, SIZES, 240);

describe('the row that a key leads to', () => {
  test('arrows go by one and stop at the ends', () => {
    expect([led('ArrowDown', 3), led('ArrowUp', 3)]).toEqual([4, 2]);
    expect([led('ArrowDown', 19), led('ArrowUp', 0)]).toEqual([19, 0]);
  });

  test('page keys leave one row of the page before in sight', () => {
    expect([led('PageDown', 3), led('PageUp', 9)]).toEqual([7, 5]);
    expect([led('PageDown', 18), led('PageUp', 2)]).toEqual([19, 0]);
    expect(rowAfter('PageDown', 3, 20, SIZES, 0)).toBe(4);
  });

  test('Home and End go to the ends, from no row too', () => {
    expect([led('Home', 7), led('End', 7)]).toEqual([0, 19]);
    expect([led('ArrowDown', -1), led('ArrowUp', -1)]).toEqual([0, 0]);
  });

  test('other keys lead nowhere, and no key does where there are no rows', () => {
    expect([led('ArrowLeft', 3), led('a', 3), led('toString', 3)]).toEqual([null, null, null]);
    expect([led('Home', -1, 0), led('End', -1, 0)]).toEqual([null, null]);
  });
});
