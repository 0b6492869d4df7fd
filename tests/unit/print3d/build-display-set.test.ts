import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { buildDisplaySet } from '../../../src/jobs/build-display-set.ts';
import { JobCancelled, type JobContext, JobRefused } from '../../../src/jobs/job.ts';
import { type DisplaySetup, usualSetup } from '../../../src/print3d/display-setup.ts';
import { isClosed, volumeOf } from '../../../src/print3d/measure-surface.ts';

const read = readFamily(readFileSync('profiles-demo/first-lesson.json', 'utf8'));
if (!read.ok) throw new Error('the lesson is not sound');
const { family } = read.document;

/** A clock that lets no time pass in a slice tells progress after each step. */
function context(changes: Partial<JobContext> = {}): JobContext {
  let time = 0;
  const now = () => {
    time += 1_000;
    return time;
  };
  return { progress: () => {}, cancelled: () => false, pause: () => Promise.resolve(), now, ...changes };
}

function build(changes: Partial<DisplaySetup> = {}, told: Partial<JobContext> = {}) {
  return buildDisplaySet({ family, setup: { ...usualSetup(family), ...changes } }, context(told));
}

test('a lesson becomes a block, a coupon for each blank and tool, and a board', async () => {
  const progress: [number, number][] = [];
  const set = await build({}, { progress: (done, total) => progress.push([done, total]) });
  const entrants = family.profiles.filter(({ kind }) => kind !== 'opening');
  expect(set.parts.map(({ name }) => name)).toEqual(['Block', ...entrants.map(({ name }) => name), 'Board']);
  expect(set.couponFrames.map(({ part }) => set.parts[part].subjects[0])).toEqual(entrants.map(({ id }) => id));
  for (const part of set.parts) {
    expect(isClosed(part)).toBe(true);
    expect(part.volume).toBeCloseTo(volumeOf(part), 6);
    expect(part.lettersFrom).toBeLessThan(part.triangles.length / 3);
  }
  const totals = new Set(progress.map(([, total]) => total));
  expect(totals.size).toBe(1);
  const [total] = totals;
  expect(progress.map(([done]) => done)).toEqual(Array.from({ length: total }, (_, i) => i + 1));
});

test('no two parts have one name, also where a blank is called as a part of the set or as another one with its id', async () => {
  const [one, two, three, four] = family.profiles.filter(({ kind }) => kind !== 'opening');
  const names = new Map([
    [one.id, 'Board'],
    [two.id, `Same (${four.id})`],
    [three.id, 'Same'],
    [four.id, 'Same'],
  ]);
  const profiles = family.profiles.map((profile) => ({ ...profile, name: names.get(profile.id) ?? profile.name }));
  const setup = { ...usualSetup(family), letters: false };
  const set = await buildDisplaySet({ family: { ...family, profiles }, setup }, context());
  const told = set.parts.map(({ name }) => name);
  expect(new Set(told).size).toBe(told.length);
  expect(told).toEqual(expect.arrayContaining(['Board', `Same (${four.id})`, 'Same', 'Same 3', 'Board 2']));
});

test('only coupons, only openings, no letters and no board are sets as well', async () => {
  const coupons = await build({ openings: [] });
  expect(new Set(coupons.parts.map(({ kind }) => kind))).toEqual(new Set(['coupon', 'board']));
  const plain = await build({ blanks: [], letters: false, board: false });
  expect(plain.parts.map(({ kind, lettersFrom, triangles }) => [kind, lettersFrom === triangles.length / 3])).toEqual([
    ['block', true],
  ]);
});

test('a coupon of which the gap leaves nothing is left out and named', async () => {
  const set = await build({ scale: 1, gap: 0.4 });
  const gone = set.checks.filter(({ kind }) => kind === 'nothing-left').flatMap(({ subjects }) => subjects);
  expect(gone.length).toBeGreaterThan(0);
  for (const id of gone) expect(set.couponFrames.some(({ profile }) => profile === id)).toBe(false);
  expect(set.checks.map(({ kind }) => kind)).toContain('true-size');
});

test('a faulty setup is refused in words, a cancelled job ends without a result', async () => {
  await expect(build({ scale: 40 })).rejects.toThrow(new JobRefused('scale must be a number from 1 to 12'));
  let asked = 0;
  await expect(build({}, { cancelled: () => ++asked > 3 })).rejects.toThrow(JobCancelled);
  expect((await build({ blanks: [] })).parts.length).toBeGreaterThan(0);
});
