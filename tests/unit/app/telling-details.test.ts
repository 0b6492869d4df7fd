import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { AS_DRAWN, type ConditionsState, conditionsFor } from '../../../src/app/state/conditions-state.ts';
import { makeDetailsStore } from '../../../src/app/state/row-details.ts';
import { TellingDetails } from '../../../src/app/state/telling-details.ts';
import { openingsOf } from '../../../src/family/family.ts';
import { FitCache } from '../../../src/family/fit-cache.ts';
import type { Fit } from '../../../src/fit/fit.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { type DetailsInput, judgeDetails, type PairDetail } from '../../../src/jobs/judge-details.ts';
import { fakeDoors, turn } from './fake-doors.ts';

const read = readFamily(readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8'));
if (!read.ok) throw new Error('the lesson must be readable');
const { family } = read.document;
const STATE: ConditionsState = { ...AS_DRAWN, telling: 'guard' };

function opened() {
  const store = makeDetailsStore();
  const fake = fakeDoors();
  const telling = new TellingDetails(store, fake.doors, new FitCache());
  const orderFor = (id: string, state: ConditionsState = STATE) => {
    const entrant = family.profiles.find((profile) => profile.id === id);
    if (!entrant) throw new Error(`no profile ${id}`);
    const conditions = conditionsFor(state, family);
    const fits = openingsOf(family).map((o): [string, Fit] => [
      o.id,
      fake.doors.judgeNow(o.ring, entrant.ring, conditions),
    ]);
    return { family, state, entrant, row: new Map(fits) };
  };
  return { store, telling, orderFor, ...fake };
}

/** The true answers to a job, one by one. */
async function detailsOf(input: DetailsInput): Promise<PairDetail[]> {
  const context = { progress() {}, cancelled: () => false, pause: async () => {}, now: () => 0 };
  return judgeDetails(input, context);
}

test('only blocked pairs are asked for their wear; what goes in goes in new', async () => {
  const { store, telling, orderFor, details, nextFrame } = opened();
  telling.follow(orderFor('heron-blank'));
  expect(store.getState().wear.get('heron-keyway')).toEqual({ blank: 0, keyway: 0, both: 0 });
  expect(details.flatMap(({ input }) => input.fits.map(({ verdict }) => verdict))).toEqual(['blocked', 'blocked']);
  for (const job of details) {
    expect(job.input.wear).toBe(true);
    for (const detail of await detailsOf(job.input)) job.part(detail);
  }
  expect(store.getState().wear.size).toBe(1);
  nextFrame();
  const { wear } = store.getState();
  expect([...wear.keys()]).toEqual(['heron-keyway', 'bittern-keyway', 'plover-keyway']);
  expect(wear.get('bittern-keyway')?.both).toBeGreaterThan(0);
});

test('a known row is told at once and asked for no more; another one cancels what is on its way', async () => {
  const { store, telling, orderFor, details } = opened();
  telling.follow(orderFor('heron-blank'));
  for (const job of details.splice(0)) {
    for (const detail of await detailsOf(job.input)) job.part(detail);
    job.finish([]);
  }
  await turn();
  const known = store.getState().wear;
  expect(known.size).toBe(3);
  telling.follow(orderFor('bittern-blank'));
  const stale = details.splice(0);
  telling.follow(orderFor('heron-blank'));
  expect(stale.every(({ cancelled }) => cancelled)).toBe(true);
  expect(store.getState().wear).toEqual(known);
  for (const job of stale) job.fail(new JobCancelled());
  await turn();
  expect(details).toEqual([]);
});

test('the answer for all parts follows the tolerances, and each set of them is asked for once', async () => {
  const { store, telling, orderFor, details, nextFrame } = opened();
  const answer = async (state: ConditionsState) => {
    telling.follow(orderFor('heron-blank', state));
    const asked = details.length;
    for (const job of details.splice(0)) {
      expect(job.input.wear).toBe(false);
      for (const detail of await detailsOf(job.input)) job.part(detail);
      job.finish([]);
    }
    await turn();
    nextFrame();
    return { asked, heron: store.getState().threeWay.get('heron-keyway') };
  };
  const parts: ConditionsState = { ...STATE, telling: 'parts' };
  const loose = { ...parts, blankTolerance: 100_000, openingTolerance: 100_000 };
  expect(await answer(parts)).toEqual({ asked: 2, heron: 'always' });
  expect(await answer(loose)).toEqual({ asked: 2, heron: 'depends' });
  expect(await answer(parts)).toEqual({ asked: 0, heron: 'always' });
});

test('worn parts say nothing of new ones: then every pair is asked for its wear', () => {
  const { telling, orderFor, details } = opened();
  telling.follow(orderFor('heron-blank', { ...STATE, wear: 10_000 }));
  expect(details.flatMap(({ input }) => input.fits)).toHaveLength(3);
});

test('nothing wanted, nothing asked; a failure is told once and not tried for ever', async () => {
  const { store, telling, orderFor, details } = opened();
  telling.follow(null);
  expect(details).toEqual([]);
  telling.follow(orderFor('heron-blank'));
  for (const job of details.splice(0)) job.fail(new Error('out of memory'));
  await turn();
  expect(store.getState().trouble).toBe('out of memory');
  telling.follow(orderFor('heron-blank'));
  expect(details).toEqual([]);
  telling.follow(orderFor('bittern-blank'));
  expect(details.length).toBeGreaterThan(0);
  expect(store.getState().trouble).toBe('');
});
