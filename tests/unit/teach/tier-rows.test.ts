import { expect, test } from 'vitest';
import { entrantsOf, type Family, openingsOf } from '../../../src/family/family.ts';
import type { KnownFits } from '../../../src/family/known-fits.ts';
import { tierRows } from '../../../src/teach/tier-rows.ts';
import { demoFamily, knowledgeOf } from './known-family.ts';

function fitsOf(family: Family): KnownFits {
  const { fitOf } = knowledgeOf(family);
  const openings = openingsOf(family).map(({ id }) => id);
  const profiles = entrantsOf(family).map(({ id }) => id);
  return { openings, profiles, fits: profiles.map((entrant) => openings.map((opening) => fitOf(entrant, opening))) };
}

const college = demoFamily('polderwick');
const fits = fitsOf(college);
const names = (rows: ReturnType<typeof tierRows>) => rows.rows.map(({ plates }) => plates.map(({ name }) => name));

test('blanks stand in rows from one keyway to all, tools left out, two lengths of one section in one place', () => {
  const tiers = tierRows(college, fits);
  expect(names(tiers)).toEqual([
    ['Heron', 'Smew', 'Bittern', 'Ruff', 'Plover', 'Knot', 'Curlew', 'Rail', 'Avocet', 'Dunlin'],
    ['Reed', 'Dyke', 'Shore'],
    ['Causeway'],
    ['Polder'],
  ]);
  expect(tiers.rows.map(({ words }) => words)).toEqual(['1 keyway', '3 keyways', '7 keyways', 'all 10 keyways']);
  expect(tiers.rows[2].plates[0].onto).toEqual(['ruff-blank', 'reed-group-blank', 'dyke-group-blank']);
});

test('up to a blank: only what stands at or below it', () => {
  expect(names(tierRows(college, fits, 'reed-group-blank'))).toEqual([['Heron', 'Smew', 'Bittern'], ['Reed']]);
  // A blank that is gone limits nothing.
  expect(names(tierRows(college, fits, 'gone')).flat()).toHaveLength(15);
});

test('nothing known, no rows; a row of several counts says from how many to how many', () => {
  expect(tierRows(college, null)).toEqual({ rows: [], of: 0 });
  const fewer: KnownFits = {
    ...fits,
    fits: fits.fits.map((row, i) => (i === 0 || i === 1 ? row.map(() => row[0]) : row)),
  };
  // The Heron blanks now enter all: with Polder in one place.
  expect(names(tierRows(college, fewer)).at(-1)).toEqual(['Heron and Polder']);
});
