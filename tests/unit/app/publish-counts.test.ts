import { expect, test } from 'vitest';
import { sheetCounts } from '../../../src/app/state/publish/sheet-counts.ts';
import { entrantsOf, openingsOf } from '../../../src/family/family.ts';
import type { SheetOrder } from '../../../src/publish/sheet-order.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const ANY = { paper: 'A4', turned: 'portrait', palette: 'colour', units: 'mm' } as const;
const family = demoFamily();
const told = (order: SheetOrder) => sheetCounts(family, order).map(({ term, value }) => `${term} ${value}`);

test('a sheet of one pair counts that pair, one of the family counts all of it', () => {
  const [keyways, entrants] = [openingsOf(family).length, entrantsOf(family).length];
  expect(told({ sheet: 'scale', ...ANY, enlarge: 6 })).toEqual(['keyways 1', 'blanks and tools 1']);
  const whole = [`keyways ${keyways}`, `blanks and tools ${entrants}`];
  expect(told({ sheet: 'scale', ...ANY, enlarge: 6, all: true })).toEqual(whole);
  expect(told({ sheet: 'matrix', ...ANY })).toEqual(whole);
});

test('without tools blanks alone are counted; a card for one names keyways only', () => {
  const blanks = family.profiles.filter(({ kind }) => kind === 'blank').length;
  expect(told({ sheet: 'chart', ...ANY, blanksOnly: true })[1]).toBe(`blanks ${blanks}`);
  expect(told({ sheet: 'card', ...ANY, of: 'x' })).toEqual([`keyways ${openingsOf(family).length}`]);
});
