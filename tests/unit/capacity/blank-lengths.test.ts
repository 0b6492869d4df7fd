import { expect, test } from 'vitest';
import { blankForLength } from '../../../src/capacity/blank-lengths.ts';

/** Two blanks of one section in two lengths, one without a length, and a blank of another section. */
const GOES_IN = [
  [true, false],
  [true, false],
  [true, false],
  [false, true],
];

test.each([
  [5, 0, false],
  [6, 1, false],
  // A longer one before one that nobody knows the length of.
  [4, 0, false],
  // Nothing so long is known: the one without a stated length may be.
  [7, 2, false],
])('for %i chambers the blank with the number %i', (chambers, blank, tooShort) => {
  expect(blankForLength(GOES_IN, 0, [5, 6, undefined, 7], chambers)).toEqual({ blank, tooShort });
});

test('one that is stated to be shorter is told so; blanks of other sections are never taken', () => {
  expect(blankForLength(GOES_IN, 1, [5, 6, 4, 7], 7)).toEqual({ blank: 1, tooShort: true });
  expect(blankForLength(GOES_IN, 3, [5, 6, 4, undefined], 6)).toEqual({ blank: 3, tooShort: false });
});
