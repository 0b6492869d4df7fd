// Widths of slots and tongues as limits of size, like the fits of a shaft in a hole: always, where the least slot takes the
// greatest tongue; never, where the greatest slot does not take the least tongue. Source: ISO 286-1, limits and fits
// (from memory); the arithmetic stands in each case.

import { describe, expect, test } from 'vitest';
import { type CheckedClaim, claimsSummary, countStandings, isFailing } from '../../../src/claims/check-claims.ts';
import type { Claim } from '../../../src/family/claim.ts';
import type { Family } from '../../../src/family/family.ts';
import { catalogue } from '../../../src/jobs/catalogue.ts';
import { type SlotPart, slotFamily } from '../../cases/slot-family.ts';

const CONTEXT = { progress: () => {}, cancelled: () => false, pause: async () => {}, now: () => 0 };

async function check(family: Family, claims: readonly Claim[]): Promise<readonly CheckedClaim[]> {
  const { claims: told } = await catalogue.checkFamilyClaims({ family, claims }, CONTEXT);
  return told.map(({ checked }) => checked);
}

const enters: Claim = { blank: 'tongue', opening: 'slot', enters: true };
const staysOut: Claim = { ...enters, enters: false };

/** The standings of "enters" and of "does not enter" for one slot and one tongue, widths and deviations in mm. */
async function standingsOf(slot: Omit<SlotPart, 'id'>, tongue: Omit<SlotPart, 'id'>): Promise<string[]> {
  const family = slotFamily([{ id: 'slot', ...slot }], [{ id: 'tongue', ...tongue }]);
  return (await check(family, [enters, staysOut])).map(({ standing }) => standing);
}

describe('a tongue in a slot, by limits of size', () => {
  test.each([
    // slot 1.10 - 2 * 0.02 = 1.06, tongue 1.00 + 2 * 0.02 = 1.04: all go in.
    [1.1, 0.02, 1, 0.02, 'confirmed', 'contradicted'],
    // 1.06 and 1.06: the closest just go in, and touching is allowed.
    [1.1, 0.02, 1, 0.03, 'confirmed', 'contradicted'],
    // 1.06 and 1.062: the closest do not, the nominal ones do.
    [1.1, 0.02, 1, 0.031, 'too close to call', 'too close to call'],
    // slot 1.00 + 2 * 0.02 = 1.04, tongue 1.10 - 2 * 0.02 = 1.06: none goes in.
    [1, 0.02, 1.1, 0.02, 'contradicted', 'confirmed'],
    // 1.05 and 1.04: the loosest do, the nominal ones do not.
    [1, 0.025, 1.1, 0.03, 'too close to call', 'too close to call'],
    // No tolerance: as drawn, in contact or 1 um too wide.
    [1, 0, 1, 0, 'confirmed', 'contradicted'],
    [1, 0, 1.002, 0, 'contradicted', 'confirmed'],
  ])('slot %f +- %f, tongue %f +- %f', async (slot, slotBand, tongue, tongueBand, yes, no) => {
    const standings = await standingsOf({ width: slot, tolerance: slotBand }, { width: tongue, tolerance: tongueBand });
    expect(standings).toEqual([yes, no]);
  });
});

test('a name of blanks of one outline but with tolerances that lead apart is too close to call', async () => {
  const family = slotFamily(
    [{ id: 'slot', width: 1.1 }],
    [
      { id: 'exact', section: 'Heron', width: 1, tolerance: 0.01 },
      { id: 'rough', section: 'Heron', width: 1, tolerance: 0.2 },
    ],
  );
  const [heron, exact] = await check(family, [
    { blank: 'Heron', opening: 'slot', enters: true },
    { blank: 'exact', opening: 'slot', enters: true },
  ]);
  expect(heron.standing).toBe('too close to call');
  expect(exact.standing).toBe('confirmed');
});

test('claims that say the opposite of one pair know each other, by whatever names', async () => {
  const family = slotFamily(
    [{ id: 'slot', width: 1.1 }],
    [{ id: 'tongue', name: 'Tongue', section: 'Heron', width: 1 }],
  );
  const checked = await check(family, [
    { blank: 'Tongue', opening: 'slot', enters: true, by: 'a' },
    { blank: 'Heron', opening: 'SLOT', enters: false, by: 'b' },
    { blank: 'tongue', opening: 'slot', enters: true, by: 'c' },
    { blank: 'nobody', opening: 'nowhere', enters: true },
    { blank: 'Nobody ', opening: 'nowhere', enters: false },
  ]);
  expect(checked.map(({ against }) => against)).toEqual([[1], [0, 2], [1], [4], [3]]);
});

test('the summary counts every standing, confirmed first; a family without claims has none', async () => {
  const family = slotFamily([{ id: 'slot', width: 1.1 }], [{ id: 'tongue', width: 1 }]);
  const checked = await check(family, [enters, staysOut, { ...enters, blank: 'nobody' }, enters]);
  expect(claimsSummary(checked)).toBe('4 claims: 2 confirmed, 1 contradicted, 1 name not found');
  expect(claimsSummary([])).toBe('0 claims');
  expect(claimsSummary(checked.slice(0, 1))).toBe('1 claim: 1 confirmed');
  expect(countStandings(checked)).toMatchObject({ confirmed: 2, contradicted: 1, 'name ambiguous': 0 });
  expect(checked.map(isFailing)).toEqual([false, true, true, false]);
});
