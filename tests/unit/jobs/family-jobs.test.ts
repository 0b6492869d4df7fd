import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Family } from '../../../src/family/family.ts';
import { catalogue } from '../../../src/jobs/catalogue.ts';
import { fitFamily } from '../../../src/jobs/fit-family.ts';
import { JobCancelled, type JobContext, JobRefused } from '../../../src/jobs/job.ts';
import { verifyFamily } from '../../../src/jobs/verify-family.ts';
import type { Profile, ProfileKind } from '../../../src/profile/profile.ts';
import { judge } from '../../kit/judge.ts';
import { boxOfMm, wardedKeyway } from '../../kit/shapes.ts';

const profile = (id: string, kind: ProfileKind, ring: Profile['ring']): Profile => ({ id, kind, name: id, ring });

/** Kinds deliberately mixed: the file's order is the chart's order. */
const family: Family = {
  name: 'Polderwick College, three rooms',
  units: 'mm',
  runningClearance: 40_000,
  tolerance: 0,
  tiltLimit: 0,
  profiles: [
    profile('strip', 'tool', boxOfMm(0.6, 6)),
    profile('heron-keyway', 'opening', boxOfMm(2.1, 8.5)),
    profile('heron-blank', 'blank', boxOfMm(2, 8.4)),
    profile('bittern-keyway', 'opening', wardedKeyway(0.6)),
    profile('bittern-blank', 'blank', boxOfMm(1.4, 8.4)),
  ],
};

function shell(cancelled = false) {
  const told: [number, number][] = [];
  let time = 0;
  const context: JobContext = {
    progress: (done, total) => void told.push([done, total]),
    cancelled: () => cancelled,
    pause: () => Promise.resolve(),
    now: () => (time += 100),
  };
  return { context, told };
}

describe('judging a family', () => {
  test('rows are blanks and tools, columns are openings, both in chart order', async () => {
    const { openings, profiles, fits } = await fitFamily({ family }, shell().context);
    expect(openings).toEqual(['heron-keyway', 'bittern-keyway']);
    expect(profiles).toEqual(['strip', 'heron-blank', 'bittern-blank']);
    expect(fits.map((row) => row.map(({ verdict }) => verdict))).toEqual([
      ['enters', 'enters'],
      ['enters', 'blocked'],
      ['enters', 'enters'],
    ]);
  });

  test('every cell is the fit of its own pair', async () => {
    const { fits } = await fitFamily({ family }, shell().context);
    expect(fits[1][1]).toEqual(judge(wardedKeyway(0.6), boxOfMm(2, 8.4), 40_000));
    expect(fits[0][1]).toEqual(judge(wardedKeyway(0.6), boxOfMm(0.6, 6), 40_000));
  });

  test('the running clearance of the family decides', async () => {
    const { fits } = await fitFamily({ family: { ...family, runningClearance: 60_000 } }, shell().context);
    expect(fits[1][0].verdict).toBe('tight');
  });

  test('progress is told, of all pairs', async () => {
    const { context, told } = shell();
    await fitFamily({ family }, context);
    expect(told).toEqual([1, 2, 3, 4, 5, 6].map((done) => [done, 6]));
  });

  test('a family without openings, or without blanks, has an empty matrix', async () => {
    const only = (kind: ProfileKind): Family => ({
      ...family,
      profiles: family.profiles.filter((p) => (p.kind === 'opening') === (kind === 'opening')),
    });
    await expect(fitFamily({ family: only('opening') }, shell().context)).resolves.toMatchObject({ fits: [] });
    const { fits, openings } = await fitFamily({ family: only('blank') }, shell().context);
    expect(openings).toEqual([]);
    expect(fits).toEqual([[], [], []]);
  });

  test('cancelled: no result', async () => {
    await expect(fitFamily({ family }, shell(true).context)).rejects.toBeInstanceOf(JobCancelled);
  });

  test('conditions that leave nothing of a blank are refused with the names of the pair', async () => {
    const job = fitFamily(
      { family, conditions: { runningClearance: 40_000, tiltLimit: 0, wear: 400_000 } },
      shell().context,
    );
    await expect(job).rejects.toBeInstanceOf(JobRefused);
    await expect(job).rejects.toThrow(/strip in heron-keyway/);
  });
});

describe('checking a judged family a second way', () => {
  test('finds nothing in a right matrix', async () => {
    const matrix = await fitFamily({ family }, shell().context);
    await expect(verifyFamily({ family, matrix }, shell().context)).resolves.toEqual([]);
  });

  test('names the pair that is wrong, and why', async () => {
    const matrix = await fitFamily({ family }, shell().context);
    const fits = matrix.fits.map((row) => [...row]);
    fits[1][1] = { ...fits[1][0] };
    const found = await verifyFamily({ family, matrix: { ...matrix, fits } }, shell().context);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ profile: 'heron-blank', opening: 'bittern-keyway' });
    expect(found[0].reasons.length).toBeGreaterThan(0);
  });

  test('can be cancelled', async () => {
    const matrix = await fitFamily({ family }, shell().context);
    await expect(verifyFamily({ family, matrix }, shell(true).context)).rejects.toBeInstanceOf(JobCancelled);
  });
});

describe('the catalogue', () => {
  test('has every operation of its folder, under the name of its file', () => {
    // What a thread keeps between two operations, and how outlines go to it, are none.
    const notOperations = new Set(['job.ts', 'catalogue.ts', 'packed-outline.ts', 'judge-kept.ts', 'keep-passages.ts']);
    const files = readdirSync(new URL('../../../src/jobs/', import.meta.url));
    const names = files
      .filter((file) => file.endsWith('.ts') && !notOperations.has(file))
      .map((file) => file.replace('.ts', '').replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase()));
    expect(Object.keys(catalogue).sort()).toEqual(names.sort());
  });

  test('all of them take an input and a context', () => {
    for (const job of Object.values(catalogue)) expect(job).toHaveLength(2);
  });
});
