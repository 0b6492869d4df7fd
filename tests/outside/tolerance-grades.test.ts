// Outside truth, typed here from reproductions of the standards and held against shared/tolerance-grades.json:
// - ISO 286-1:2010, standard tolerances (seen as a table of the grades 1 to 14; IT6 to IT12 also on a page of h
//   tolerances, "10 mm IT14 = 0.36 mm" on another). That IT14 is not for sizes up to 1 mm is from memory.
// - ISO 2768-1:1989, linear sizes (seen in a company standard that reproduces it, and on one further page).
// - The standard tolerance unit i = 0.45 D^(1/3) + 0.001 D um, D in mm the geometric mean of a range, and the multiples
//   7 to 400 for IT5 to IT14: from memory. It is why the table must not be computed.

import { describe, expect, test } from 'vitest';
import { presetTolerance, TOLERANCE_PRESETS } from '../../src/profile/tolerance-grades.ts';

const MM = 1e6;

/** um to either side at a size in mm, or null where the standard gives none. */
function umAt(name: string, mm: number): number | null {
  const read = presetTolerance(name, mm * MM);
  return read.ok ? read.tolerance / 1000 : null;
}

/** Width of the band in um: up to 3, over 3 to 6, over 6 to 10, over 10 to 18 mm. */
const IT: readonly (readonly [grade: string, um: readonly number[]])[] = [
  ['IT5', [4, 5, 6, 8]],
  ['IT6', [6, 8, 9, 11]],
  ['IT7', [10, 12, 15, 18]],
  ['IT8', [14, 18, 22, 27]],
  ['IT9', [25, 30, 36, 43]],
  ['IT10', [40, 48, 58, 70]],
  ['IT11', [60, 75, 90, 110]],
  ['IT12', [100, 120, 150, 180]],
  ['IT13', [140, 180, 220, 270]],
  ['IT14', [250, 300, 360, 430]],
];

/** Deviation to either side in mm: 0.5 to 3, over 3 to 6, over 6 to 30, over 30 to 120, over 120 to 400 mm. */
const GENERAL: readonly (readonly [grade: string, mm: readonly (number | null)[]])[] = [
  ['f', [0.05, 0.05, 0.1, 0.15, 0.2]],
  ['m', [0.1, 0.1, 0.2, 0.3, 0.5]],
  ['c', [0.2, 0.3, 0.5, 0.8, 1.2]],
  ['v', [null, 0.5, 1, 1.5, 2.5]],
];

describe('ISO 286-1 standard tolerances', () => {
  test.each(IT)('%s, in the middle of each range and at its upper end', (grade, um) => {
    expect([2, 5, 8, 15].map((size) => umAt(`ISO 286 ${grade}`, size))).toEqual(um.map((width) => width / 2));
    expect([3, 6, 10, 18].map((size) => umAt(`ISO 286 ${grade}`, size))).toEqual(um.map((width) => width / 2));
  });

  test('10 mm IT7 is 15 um wide, as tabulated, and not 14 as the formula would say', () => {
    expect(umAt('ISO 286 IT7', 10)).toBe(7.5);
    expect(umAt('ISO 286 IT14', 10)).toBe(180);
  });

  test('five grades on, a tolerance is ten times as wide, from IT7 to IT9', () => {
    for (const [fine, coarse] of [
      ['IT7', 'IT12'],
      ['IT8', 'IT13'],
      ['IT9', 'IT14'],
    ])
      for (const size of [2, 5, 8, 15])
        expect(umAt(`ISO 286 ${coarse}`, size)).toBe(10 * (umAt(`ISO 286 ${fine}`, size) ?? 0));
  });

  test('the formula, rounded, misses 26 of the 40 cells, none by more than a seventh', () => {
    const multiples = [7, 10, 16, 25, 40, 64, 100, 160, 250, 400];
    const means = [1 * 3, 3 * 6, 6 * 10, 10 * 18].map(Math.sqrt);
    let missed = 0;
    for (const [k, [grade]] of IT.entries())
      for (const [i, size] of [3, 6, 10, 18].entries()) {
        const formula = multiples[k] * (0.45 * Math.cbrt(means[i]) + 0.001 * means[i]);
        const tabulated = 2 * (umAt(`ISO 286 ${grade}`, size) ?? 0);
        if (Math.round(formula) !== tabulated) missed++;
        expect(Math.abs(formula - tabulated) / tabulated, `${grade} at ${size}`).toBeLessThan(1 / 7);
      }
    expect(missed).toBe(26);
  });

  test('IT14 is not given up to 1 mm, finer grades are', () => {
    expect(umAt('ISO 286 IT14', 1)).toBeNull();
    expect(umAt('ISO 286 IT13', 1)).toBe(70);
  });
});

describe('ISO 2768-1 general tolerances of linear sizes', () => {
  test.each(GENERAL)('class %s, in the middle of each range and at its upper end', (grade, mm) => {
    const um = mm.map((value) => (value === null ? null : value * 1000));
    expect([2, 5, 8, 40, 200].map((size) => umAt(`ISO 2768 ${grade}`, size))).toEqual(um);
    expect([3, 6, 30, 120, 400].map((size) => umAt(`ISO 2768 ${grade}`, size))).toEqual(um);
  });

  test('sizes under 0.5 mm and over 400 mm have none', () => {
    for (const [grade] of GENERAL)
      expect([0.499, 400.001].map((size) => umAt(`ISO 2768 ${grade}`, size))).toEqual([null, null]);
  });
});

test('there is nothing among the presets that this file does not check', () => {
  expect(TOLERANCE_PRESETS.map((preset) => preset.name)).toEqual([
    ...IT.map(([grade]) => `ISO 286 ${grade}`),
    ...GENERAL.map(([grade]) => `ISO 2768 ${grade}`),
  ]);
});
