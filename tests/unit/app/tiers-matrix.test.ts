import { describe, expect, test } from 'vitest';
import { placeAfter } from '../../../src/app/state/tiers/matrix-keys.ts';
import { cellMargin, matrixMeasures, matrixWidths, wantedWidth } from '../../../src/app/state/tiers/matrix-measures.ts';
import { columnNames, inOrder } from '../../../src/app/state/tiers/matrix-order.ts';
import { tiersOfFits } from '../../../src/app/state/tiers/tiers-of-fits.ts';
import { fitOf } from '../../../src/app/state/tiers/told-blocks.ts';
import type { KnownFits } from '../../../src/family/known-fits.ts';
import type { Fit, Verdict } from '../../../src/fit/fit.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { largeFamily } from '../../cases/large-families.ts';

const NOWHERE = { x: 0, y: 0, tilt: 0 };

function judgedAs(verdict: Verdict, clearance: number): Fit {
  return { verdict, clearance, accuracy: 0, placement: NOWHERE, play: { lateral: 0, vertical: 0 }, seated: NOWHERE };
}

const IN = judgedAs('enters', 50_000);
const TIGHT = judgedAs('tight', 10_000);
const OUT = judgedAs('blocked', -200_000);

const FITS: KnownFits = {
  openings: ['k1', 'k2', 'k3'],
  profiles: ['base', 'all', 'group', 'none'],
  fits: [
    [OUT, IN, OUT],
    [IN, IN, IN],
    [OUT, IN, TIGHT],
    [OUT, OUT, OUT],
  ],
};

const profile = (id: string, name: string, kind: Profile['kind'] = 'blank', section?: string): Profile => ({
  ...largeFamily(2, 3).family.profiles[0],
  id,
  name,
  kind,
  section,
});

const ids = (profiles: readonly Profile[]) => profiles.map(({ id }) => id);

describe('the order of the matrix', () => {
  const blanks = [
    profile('base', 'Strip 10'),
    profile('all', 'Strip 9'),
    profile('group', 'Alder'),
    profile('none', 'Zinc'),
  ];
  const openings = [profile('k1', 'C', 'opening'), profile('k2', 'B', 'opening'), profile('k3', 'A', 'opening')];
  const tiers = tiersOfFits(FITS, new Set())?.tiers ?? null;

  test('by tier has the highest blank first, and the keyway first that a base blank enters', () => {
    expect(ids(inOrder(blanks, 'tier', tiers))).toEqual(['all', 'group', 'base', 'none']);
    expect(ids(inOrder(openings, 'tier', tiers))).toEqual(['k2', 'k3', 'k1']);
  });

  test('by name counts numbers by their size', () => {
    expect(ids(inOrder(blanks, 'name', tiers))).toEqual(['group', 'all', 'base', 'none']);
  });

  test('is that of the chart by itself, and while no tiers are known', () => {
    expect(ids(inOrder(blanks, 'chart', tiers))).toEqual(['base', 'all', 'group', 'none']);
    expect(ids(inOrder(blanks, 'tier', null))).toEqual(['base', 'all', 'group', 'none']);
  });
});

test('a keyway is called by its section unless two have the same', () => {
  const names = columnNames([
    profile('a', 'Rail keyway', 'opening', 'Rail'),
    profile('b', 'Teal keyway', 'opening', 'Teal'),
    profile('c', 'Teal keyway, worn', 'opening', 'Teal'),
    profile('d', 'Odd keyway', 'opening'),
  ]);
  expect([...names.values()]).toEqual(['Rail', 'Teal keyway', 'Teal keyway, worn', 'Odd keyway']);
});

describe('tiers of what is known', () => {
  test('wait for every pair, but not for blanks that are worn away', () => {
    const gap: KnownFits = { ...FITS, fits: [[OUT, undefined, OUT], ...FITS.fits.slice(1)] };
    expect(tiersOfFits(gap, new Set())).toBeNull();
    expect(tiersOfFits(gap, new Set(['base']))?.table.entrants).toEqual(['all', 'group', 'none']);
  });

  test('stay the same value while depths are measured', () => {
    const before = tiersOfFits(FITS, new Set());
    const after = tiersOfFits({ ...FITS, fits: FITS.fits.map((row) => [...row]) }, new Set());
    expect(after).toBe(before);
  });
});

describe('the keys of the matrix', () => {
  const size = { rows: 50, columns: 20, pageRows: 10, pageColumns: 6 };
  const press = (row: number, column: number, key: string, command = false, alt = false) =>
    placeAfter({ row, column }, { key, command, alt }, size);

  test('arrows go by one, into the heads and no further', () => {
    expect(press(3, 4, 'ArrowDown')).toEqual({ row: 4, column: 4 });
    expect(press(0, 4, 'ArrowUp')).toEqual({ row: -1, column: 4 });
    expect(press(-1, -1, 'ArrowUp')).toEqual({ row: -1, column: -1 });
    expect(press(49, 19, 'ArrowRight')).toEqual({ row: 49, column: 19 });
  });

  test('Home, End and the page keys', () => {
    expect(press(3, 4, 'Home')).toEqual({ row: 3, column: 0 });
    expect(press(3, 4, 'End')).toEqual({ row: 3, column: 19 });
    expect(press(3, 4, 'Home', true)).toEqual({ row: 0, column: 0 });
    expect(press(3, 4, 'End', true)).toEqual({ row: 49, column: 19 });
    expect(press(3, 4, 'PageDown')).toEqual({ row: 13, column: 4 });
    expect(press(3, 4, 'PageUp')).toEqual({ row: 0, column: 4 });
    expect(press(3, 4, 'PageDown', false, true)).toEqual({ row: 3, column: 10 });
    expect(press(3, 4, 'a')).toBeNull();
  });
});

describe('the sizes of the matrix', () => {
  const widths = matrixWidths({ rows: ['Heron blank, five chambers', 'Reed blank'], columns: ['Heron', 'Curlew'] });

  test('cells are as large as lets all columns be seen', () => {
    expect(matrixMeasures(null, 10, widths, 1000).size).toBe('middle');
    expect(matrixMeasures(null, 10, widths, 480).size).toBe('small');
    expect(matrixMeasures('large', 10, widths, 480).margins).toBe(true);
  });

  test('a matrix as wide as it wants shows all columns', () => {
    const names = { rows: ['Heron blank, five chambers'], columns: Array.from({ length: 10 }, () => 'Curlew') };
    const wanted = wantedWidth(matrixWidths(names));
    const { nameWidth, cellWidth, overhang } = matrixMeasures('small', 10, matrixWidths(names), wanted);
    expect(nameWidth + 10 * cellWidth + overhang).toBeLessThanOrEqual(wanted);
  });
});

test('a margin in a cell has its sign and no unit', () => {
  expect(cellMargin(IN, 'mm')).toBe('+0.050');
  expect(cellMargin(OUT, 'mm')).toBe('−0.200');
  expect(cellMargin(judgedAs('enters', 25_400), 'in')).toBe('+1.0');
  expect(cellMargin(judgedAs('blocked', Number.NaN), 'mm')).toBe('…');
});

test('a fit is found by ids, and not where there is none', () => {
  expect(fitOf(FITS, 'group', 'k3')).toBe(TIGHT);
  expect(fitOf(FITS, 'nobody', 'k3')).toBeUndefined();
  expect(fitOf(null, 'group', 'k3')).toBeUndefined();
});
