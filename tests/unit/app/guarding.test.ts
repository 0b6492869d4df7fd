import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { Guarding, makeGuardStore } from '../../../src/app/state/guarding.ts';
import { entrantsOf, type Family, openingsOf } from '../../../src/family/family.ts';
import { FitCache } from '../../../src/family/fit-cache.ts';
import type { GuardMargins } from '../../../src/family/guard-margin.ts';
import { plainConditions } from '../../../src/fit/conditions.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { fakeDoors, turn } from './fake-doors.ts';

const read = readFamily(readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8'));
if (!read.ok) throw new Error('the lesson must be readable');
const { family } = read.document;
const MARGINS: GuardMargins = {
  guard: { profile: 'heron-blank', opening: 'bittern-keyway', length: 110_000 },
  clearance: { profile: 'heron-blank', opening: 'heron-keyway', length: 50_000 },
};

function opened() {
  const store = makeGuardStore();
  const fake = fakeDoors();
  const cache = new FitCache();
  const conditions = plainConditions(family.runningClearance);
  const judgeAll = (of: Family) => {
    for (const { ring } of entrantsOf(of))
      for (const opening of openingsOf(of))
        cache.set(opening.ring, ring, conditions, fake.doors.judgeNow(opening.ring, ring, conditions));
  };
  return { store, guarding: new Guarding(store, fake.doors, cache), judgeAll, ...fake };
}

test('it waits for the whole family, then measures once the hand is calm, and is kept with the family', async () => {
  const { store, guarding, judgeAll, guards, calm } = opened();
  guarding.follow(family, false);
  calm();
  guarding.follow(family, true);
  calm();
  expect(guards).toEqual([]);
  expect(store.getState()).toMatchObject({ phase: 'waiting', margins: null });
  judgeAll(family);
  guarding.follow(family, true);
  expect(guards).toEqual([]);
  calm();
  expect(store.getState().phase).toBe('measuring');
  expect(guards[0].input.matrix.fits.flat()).toHaveLength(15);
  guards[0].finish(MARGINS);
  await turn();
  expect(store.getState()).toMatchObject({ phase: 'known', margins: MARGINS });
  const other = { ...family };
  guarding.follow(other, false);
  expect(store.getState()).toMatchObject({ phase: 'waiting', margins: null });
  guarding.follow(family, true);
  expect(store.getState()).toMatchObject({ phase: 'known', margins: MARGINS });
  expect(guards).toHaveLength(1);
});

test('a family in which every blank goes into every keyway keeps nothing out', async () => {
  const keepsOut = async (of: Family) => {
    const { store, guarding, judgeAll, guards, calm } = opened();
    judgeAll(of);
    guarding.follow(of, true);
    calm();
    guards[0].finish({ guard: null, clearance: null });
    await turn();
    return store.getState().keepsOut;
  };
  const heron = { ...family, profiles: family.profiles.filter(({ section }) => section === 'Heron') };
  expect(heron.profiles.map(({ kind }) => kind).sort()).toEqual(['blank', 'opening']);
  expect(await keepsOut(heron)).toBe(false);
  expect(await keepsOut(family)).toBe(true);
});

test('an edit cancels what is on its way, and the edited family is measured next', async () => {
  const { store, guarding, judgeAll, guards, calm } = opened();
  judgeAll(family);
  guarding.follow(family, true);
  calm();
  const edited = { ...family };
  guarding.follow(edited, true);
  expect(guards[0].cancelled).toBe(true);
  calm();
  expect(guards).toHaveLength(1);
  guards[0].fail(new JobCancelled());
  await turn();
  expect(guards).toHaveLength(2);
  expect(guards[1].input.family).toBe(edited);
  guards[1].fail(new Error('out of memory'));
  await turn();
  expect(store.getState().phase).toBe('failed');
});
