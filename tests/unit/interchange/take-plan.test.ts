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

test('others may be left out', () => {
  expect(takePlan(FILE, [HERON], false).profiles.map(({ id }) => id)).toEqual(['heron-keyway']);
});

test('an id that a kept profile has is left to it', () => {
  const { profiles } = takePlan(FILE, [{ ...HERON, id: 'old-keyway' }], true);
  expect(profiles.map(({ id }) => id)).toEqual(['old-keyway', 'old-keyway-2']);
  expect(
    takePlan(takePlan(FILE, [{ ...HERON, id: 'old-keyway' }], true), [{ ...HERON, id: 'old-keyway' }], true),
  ).toEqual(takePlan(FILE, [{ ...HERON, id: 'old-keyway' }], true));
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
