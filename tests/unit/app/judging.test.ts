import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { Judging, type JudgingOrder } from '../../../src/app/state/judging.ts';
import { makeResultsStore } from '../../../src/app/state/results-state.ts';
import { entryMatrix } from '../../../src/family/entry-matrix.ts';
import type { Family } from '../../../src/family/family.ts';
import { FitCache, isMeasured } from '../../../src/family/fit-cache.ts';
import { plainConditions } from '../../../src/fit/conditions.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { replaceOutline } from '../../../src/interchange/json/replace-outline.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { answersTo, fakeDoors, settle, turn } from './fake-doors.ts';

const read = readFamily(readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8'));
if (!read.ok) throw new Error('the lesson must be readable');
const lesson = read.document;
const { family } = lesson;

/** The same family with the outline of one profile moved by a hundredth of a millimetre at its first corner. */
function editedFamily(id: string, by = 10_000): Family {
  const ring = family.profiles.find((profile) => profile.id === id)?.ring ?? [];
  const edit = replaceOutline(lesson, id, [{ x: ring[0].x + by, y: ring[0].y }, ...ring.slice(1)]);
  if (!edit.ok) throw new Error(edit.fault.message);
  return edit.document.family;
}

function orderOf(of: Family, picked: Partial<JudgingOrder> = {}): JudgingOrder {
  return { family: of, conditions: plainConditions(of.runningClearance), entrantId: null, openingId: null, ...picked };
}

function opened() {
  const store = makeResultsStore();
  const fake = fakeDoors();
  const cache = new FitCache();
  const judging = new Judging(store, fake.doors, cache);
  const fits = () => store.getState().fits?.fits ?? [];
  /** Answers all that is on its way, verdicts and figures, until the judging is done. */
  const finish = async () => {
    for (let n = 0; n < 20 && store.getState().phase !== 'done'; n++) {
      fake.calm();
      for (const job of fake.pairs.splice(0)) await settle(job);
    }
  };
  return { store, judging, cache, fits, finish, ...fake };
}

/** The whole truth about a family, judged pair by pair without any of this. */
function judgedAtOnce(of: Family) {
  const steps = entryMatrix(of);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

test('verdicts come first, then figures, and in the end the matrix is the whole truth', async () => {
  const { store, judging, pairs, fits, calm, finish } = opened();
  judging.follow(orderOf(family));
  expect(store.getState()).toMatchObject({ phase: 'judging', done: 0, total: 15 });
  expect(pairs.map(({ input }) => input.measured)).toEqual([false, false]);
  for (const job of pairs.splice(0)) await settle(job);
  expect(store.getState().phase).toBe('measuring');
  expect(
    fits()
      .flat()
      .map((fit) => fit?.verdict),
  ).toEqual(
    judgedAtOnce(family)
      .fits.flat()
      .map((fit) => fit.verdict),
  );
  expect(
    fits()
      .flat()
      .every((fit) => fit?.verdict === 'blocked' || (fit && isMeasured(fit))),
  ).toBe(true);
  expect(pairs).toEqual([]);
  calm();
  expect(pairs.map(({ input }) => input.measured)).toEqual([true, true]);
  await finish();
  expect(store.getState().fits).toEqual(judgedAtOnce(family));
});

test('the picked row comes first in every thread, and the pair looked at comes at once', async () => {
  const { judging, pairs, fits } = opened();
  judging.follow(orderOf(family, { entrantId: 'plover-blank', openingId: 'bittern-keyway' }));
  const row = 2;
  expect(fits()[row][1]).toEqual(judgedAtOnce(family).fits[row][1]);
  expect(pairs.map(({ input }) => input.pairs[0])).toEqual([row, row]);
  expect(pairs.flatMap(({ input }) => [...input.pairs])).not.toContain(undefined);
  const asked = pairs.map(({ input }) => input.pairs.length / 2);
  expect(asked[0] + asked[1]).toBe(14);
});

test('parts land as they come, one update of the store a frame', async () => {
  const { store, judging, pairs, fits, nextFrame } = opened();
  judging.follow(orderOf(family));
  let updates = 0;
  store.subscribe(() => updates++);
  const before = fits();
  for (const job of pairs) {
    job.part(answersTo(job.input, 0, 1));
    job.part(answersTo(job.input, 1, 1));
  }
  expect(updates).toBe(0);
  expect(nextFrame()).toBe(1);
  expect(updates).toBe(1);
  expect(store.getState().done).toBe(4);
  expect(fits().flat().filter(Boolean)).toHaveLength(4);
  const touched = new Set(pairs.flatMap(({ input }) => [input.pairs[0], input.pairs[2]]));
  for (const [i, row] of fits().entries()) expect(row === before[i]).toBe(!touched.has(i));
});

test('what the cache knows is there at once, and an edit asks for its own row or column only', async () => {
  const { store, judging, pairs, fits, finish } = opened();
  judging.follow(orderOf(family));
  await finish();
  const before = fits();
  judging.follow(orderOf(editedFamily('bittern-blank')));
  expect(pairs.flatMap(({ input }) => [...input.pairs])).toEqual([1, 0, 1, 2, 1, 1]);
  expect([fits()[0] === before[0], fits()[1] === before[1], fits()[2] === before[2]]).toEqual([true, false, true]);
  await finish();
  judging.follow(orderOf(editedFamily('bittern-keyway')));
  expect(fits().map((row) => row.map((fit) => fit !== undefined))).toEqual(before.map(() => [true, false, true]));
  await finish();
  judging.follow(orderOf(family));
  expect(store.getState().phase).toBe('done');
  expect(fits()).toEqual(before);
  expect(pairs).toEqual([]);
});

test('a stale job is cancelled, and its late answers go into the cache but into no other matrix', async () => {
  const { store, judging, pairs, cache, fits, nextFrame } = opened();
  judging.follow(orderOf(family));
  const stale = pairs.splice(0);
  const edited = editedFamily('heron-blank');
  judging.follow(orderOf(edited));
  expect(stale.map(({ cancelled }) => cancelled)).toEqual([true, true]);
  // One flight at a time: the next starts when the old one has heard.
  expect(pairs).toEqual([]);
  for (const job of stale) job.part(answersTo(job.input));
  nextFrame();
  expect(fits().flat().filter(Boolean)).toEqual([]);
  const [keyway] = family.profiles;
  const blank = family.profiles.find(({ id }) => id === 'heron-blank');
  expect(blank && cache.get(keyway.ring, blank.ring, plainConditions(family.runningClearance))).toBeDefined();
  for (const job of stale) job.fail(new JobCancelled());
  await turn();
  // The unchanged rows are known by now; only the edited one is asked for.
  expect(new Set(pairs.flatMap(({ input }) => [...input.pairs].filter((_, at) => at % 2 === 0)))).toEqual(new Set([0]));
  expect(fits()[1].every(Boolean)).toBe(true);
  expect(store.getState().phase).toBe('judging');
});

test('another pick while judging brings its row to the front', async () => {
  const { judging, pairs } = opened();
  judging.follow(orderOf(family, { entrantId: 'heron-blank' }));
  const first = pairs.splice(0);
  judging.follow(orderOf(family, { entrantId: 'strip-06' }));
  for (const job of first) await settle(job);
  expect(pairs.map(({ input }) => input.pairs[0])).toEqual([4, 4]);
});

test('figures wait until the hand is calm', async () => {
  const { judging, pairs, calm } = opened();
  judging.follow(orderOf(family));
  for (const job of pairs.splice(0)) await settle(job);
  for (let by = 1; by <= 3; by++) {
    judging.follow(orderOf(editedFamily('heron-blank', by * 1000)));
    expect(pairs.every(({ input }) => !input.measured)).toBe(true);
    for (const job of pairs.splice(0)) await settle(job);
  }
  expect(pairs).toEqual([]);
  expect(calm()).toBe(1);
  expect(pairs.every(({ input }) => input.measured)).toBe(true);
  expect(pairs.length).toBeGreaterThan(0);
});

test('a stop keeps what was found and goes on from there', async () => {
  const { store, judging, pairs, fits, finish } = opened();
  judging.follow(orderOf(family));
  pairs[0].part(answersTo(pairs[0].input, 0, 2));
  judging.stop();
  expect(store.getState().phase).toBe('stopped');
  expect(fits().flat().filter(Boolean)).toHaveLength(2);
  for (const job of pairs.splice(0)) await settle(job);
  expect(store.getState().phase).toBe('stopped');
  judging.again();
  expect(pairs.flatMap(({ input }) => [...input.pairs])).toHaveLength(26);
  await finish();
  expect(store.getState().phase).toBe('done');
  judging.stop();
  expect(store.getState().phase).toBe('done');
});

test('a job that fails says why, and its fellow is cancelled', async () => {
  const { store, judging, pairs } = opened();
  judging.follow(orderOf(family));
  pairs[0].fail(new Error('out of memory'));
  await turn();
  expect(pairs[1].cancelled).toBe(true);
  await settle(pairs[1]);
  expect(store.getState()).toMatchObject({ phase: 'failed', trouble: 'out of memory' });
});

test('a thread that was ended for another job is no failure: its pairs are asked for again', async () => {
  const { store, judging, pairs, finish } = opened();
  judging.follow(orderOf(family));
  const [lost, kept] = pairs.splice(0);
  lost.fail(new JobCancelled());
  await settle(kept);
  expect(pairs.flatMap(({ input }) => [...input.pairs])).toHaveLength(16);
  await finish();
  expect(store.getState().phase).toBe('done');
});

test('a browser that allows no worker is a failed judgement, not a broken window', async () => {
  const { store, doors, cache } = opened();
  const judgePairs = () => {
    throw new Error('workers are forbidden here');
  };
  new Judging(store, { ...doors, judgePairs }, cache).follow(orderOf(family));
  await turn();
  expect(store.getState()).toMatchObject({ phase: 'failed', trouble: 'workers are forbidden here' });
});

test('a blank that wear would leave nothing of is named and not judged', async () => {
  const { store, judging, pairs } = opened();
  judging.follow(orderOf(family, { conditions: { ...plainConditions(family.runningClearance), wear: 350_000 } }));
  expect([...store.getState().wornAway]).toEqual(['strip-06']);
  const rows = new Set(pairs.flatMap(({ input }) => [...input.pairs].filter((_, at) => at % 2 === 0)));
  expect(rows).toEqual(new Set([0, 1, 2, 3]));
});
