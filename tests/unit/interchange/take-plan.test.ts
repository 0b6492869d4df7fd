import { expect, test } from 'vitest';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import type { FamilyFile } from '../../../src/interchange/json/schema.ts';
import { takePlan } from '../../../src/interchange/json/take-plan.ts';
import type { PlannedProfile } from '../../../src/plan/drawn-plan.ts';

const MILLED = { thickness: 2.1, height: 8.4, grooves: [] };

const FILE: FamilyFile = {
  format: 'sectionary-family',
  version: 1,
  name: 'Marsh',
  units: 'mm',
  runningClearance: 0.04,
  profiles: [
    { id: 'old-keyway', kind: 'opening', name: 'Old keyway', milled: MILLED },
    {
      id: 'heron-keyway',
      kind: 'opening',
      name: 'Heron keyway',
      milled: MILLED,
      planned: true,
      note: 'Gatehouse.',
      tolerance: 0.1,
    },
    { id: 'gone-blank', kind: 'blank', name: 'Gone blank', milled: MILLED, planned: true },
  ],
};

const groove = { side: 'left', bottom: 1_600_000, width: 750_000, depth: 600_000, flank: 0, rootRadius: 0 } as const;
const HERON: PlannedProfile = {
  id: 'heron-keyway',
  kind: 'opening',
  name: 'Heron keyway',
  section: 'Heron',
  milled: { thickness: 2_160_000, height: 8_560_000, backRadius: 0, grooves: [groove] },
};

test('planned profiles take the place of those planned before; others stay where they are', () => {
  const { profiles } = takePlan(FILE, [HERON], true);
  expect(profiles.map(({ id }) => id)).toEqual(['old-keyway', 'heron-keyway']);
  expect(profiles[0]).toBe(FILE.profiles[0]);
  expect(profiles[1]).toMatchObject({ planned: true, section: 'Heron', note: 'Gatehouse.' });
  expect(profiles[1].milled?.thickness).toBe(2.16);
  expect('tolerance' in profiles[1]).toBe(false);
});

test('what was planned under another id keeps it where it is called the same: ids were once made in another way', () => {
  const [old, heron, gone] = FILE.profiles;
  const before = { ...FILE, profiles: [old, { ...heron, id: 'hero-n-keyway', chambers: 6, inBetween: true }, gone] };
  const { profiles } = takePlan(before, [HERON], true);
  expect(profiles.map(({ id }) => id)).toEqual(['old-keyway', 'hero-n-keyway']);
  expect(profiles[1]).toMatchObject({ section: 'Heron', note: 'Gatehouse.', chambers: 6, inBetween: true });
  // One that is drawn under its own id is not taken for another of the same name.
  const twice = takePlan(FILE, [HERON, { ...HERON, id: 'heron-keyway-2' }], true);
  expect(twice.profiles.map(({ id, note }) => [id, note]).slice(1)).toEqual([
    ['heron-keyway', 'Gatehouse.'],
    ['heron-keyway-2', undefined],
  ]);
});

test('others may be left out', () => {
  expect(takePlan(FILE, [HERON], false).profiles.map(({ id }) => id)).toEqual(['heron-keyway']);
});

test('an id that a kept profile has is left to it', () => {
  const named = [{ ...HERON, id: 'old-keyway', name: 'Old keyway again' }];
  const { profiles } = takePlan(FILE, named, true);
  expect(profiles.map(({ id }) => id)).toEqual(['old-keyway', 'old-keyway-2']);
  expect(takePlan(takePlan(FILE, named, true), named, true)).toEqual(takePlan(FILE, named, true));
});

test('taking the same plan twice is taking it once, and the file stays sound', () => {
  const once = takePlan(FILE, [HERON], true);
  expect(takePlan(once, [HERON], true)).toEqual(once);
  const read = changeFamily(once);
  expect(read.ok && read.document.family.profiles[1].milled).toEqual(HERON.milled);
});

test('a section that goes is gone from the profile', () => {
  const { section: _, ...bare } = HERON;
  const taken = takePlan(takePlan(FILE, [HERON], true), [bare], true);
  expect('section' in taken.profiles[1]).toBe(false);
});
