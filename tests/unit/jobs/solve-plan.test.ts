import { expect, test, vi } from 'vitest';
import { JobCancelled, JobRefused } from '../../../src/jobs/job.ts';
import { solvePlan } from '../../../src/jobs/solve-plan.ts';
import type { AccessTable } from '../../../src/plan/access-table.ts';
import { solveAtOnce } from '../../../src/plan/solve.ts';
import { checkWardPlan, type WardPlan } from '../../../src/plan/ward-plan.ts';
import { campus } from '../../cases/access-tables.ts';
import { solveOptions } from '../../kit/solve-table.ts';

function contextWith(changes: { cancelAfter?: number } = {}) {
  const heard = { parts: [] as WardPlan[], progress: [] as number[], looks: 0 };
  const context = {
    progress: (done: number) => void heard.progress.push(done),
    part: (plan: unknown) => void heard.parts.push(plan as WardPlan),
    cancelled: () => ++heard.looks > (changes.cancelAfter ?? Number.POSITIVE_INFINITY),
    pause: () => new Promise<void>((resolve) => setImmediate(resolve)),
    now: () => performance.now(),
  };
  return { heard, context };
}

test('parts get better, each keeps the table, the last is the result; progress is time', async () => {
  const table = campus([4, 4]);
  const { heard, context } = contextWith();
  const plan = await solvePlan({ table, options: solveOptions() }, context);
  expect(plan).toMatchObject({ sites: 6, lowerBound: 6, proved: true, bound: 'search' });
  expect(heard.parts.at(-1)).toEqual(plan);
  expect(heard.parts[0].proved).toBe(false);
  for (const [at, part] of heard.parts.entries()) {
    expect(checkWardPlan(table, part, 1)).toBeNull();
    if (at > 0)
      expect(part.grooved <= heard.parts[at - 1].grooved || part.sites < heard.parts[at - 1].sites).toBe(true);
  }
  expect(plan.grooved).toBeLessThanOrEqual(heard.parts[0].grooved);
  expect([...heard.progress].sort((a, b) => a - b)).toEqual(heard.progress);
});

test('a cancel is heard, also while the exact solver works', async () => {
  // Three stops for 20 sections in groups: nothing that is shown in a moment.
  const { context, heard } = contextWith({ cancelAfter: 40 });
  const options = solveOptions({ stops: 3, seconds: 600 });
  await expect(solvePlan({ table: campus([5, 5, 5, 5]), options }, context)).rejects.toThrow(JobCancelled);
  expect(heard.parts.length).toBeGreaterThan(0);
});

test('without time the answer at once is the result, with its gap', async () => {
  const { context } = contextWith();
  const table = campus([4, 4]);
  const plan = await solvePlan({ table, options: solveOptions({ seconds: 0 }) }, context);
  expect(plan).toEqual(solveAtOnce(table, solveOptions()));
  expect(plan).toMatchObject({ lowerBound: 5, proved: false });
});

test.each<[string, AccessTable, Partial<WardPlan>]>([
  [
    'nothing forbidden',
    [
      [1, 1],
      [1, null],
    ],
    { sites: 0, lowerBound: 0, bound: 'none', proved: true, grooved: 0 },
  ],
  ['no sections', [], { sites: 0, wards: [], grooves: [], proved: true }],
  ['no blanks', [[], []], { sites: 0, wards: [[], []], grooves: [], proved: true }],
  ['a blank that enters nothing', [[0], [0]], { sites: 1, proved: true, wards: [[1], [1]], grooves: [[0]] }],
  ['one section alone', [[1, 0]], { sites: 1, proved: true }],
])('%s', async (_, table, wanted) => {
  const { context } = contextWith();
  expect(await solvePlan({ table, options: solveOptions() }, context)).toMatchObject(wanted);
});

test('a table that is none is refused', async () => {
  const { context } = contextWith();
  for (const table of [[[1, 0], [1]], [[2]]] as unknown as AccessTable[]) {
    await expect(solvePlan({ table, options: solveOptions() }, context)).rejects.toThrow(JobRefused);
    expect(solveAtOnce(table, solveOptions())).toBeNull();
  }
});

test('where clingo cannot be loaded the plan stays, with its bound and the reason', async () => {
  vi.resetModules();
  vi.doMock('clingo-wasm', () => {
    throw new Error('no such file');
  });
  const { solvePlan: without } = await import('../../../src/jobs/solve-plan.ts');
  const { context } = contextWith();
  const plan = await without({ table: campus([4, 4]), options: solveOptions() }, context);
  vi.doUnmock('clingo-wasm');
  expect(plan).toMatchObject({ sites: 6, lowerBound: 5, proved: false, bound: 'sperner' });
  expect(plan.note).toMatch(/^the exact solver could not be loaded/);
});
