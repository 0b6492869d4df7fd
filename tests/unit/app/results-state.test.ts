import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { makeJudging, makeResultsStore } from '../../../src/app/state/results-state.ts';
import type { EntryMatrix } from '../../../src/family/entry-matrix.ts';
import type { Family } from '../../../src/family/family.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';

const read = readFamily(readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8'));
if (!read.ok) throw new Error('the lesson must be readable');
const { family } = read.document;
const matrixOf = (name: string): EntryMatrix => ({ openings: [name], profiles: [], fits: [] });

/** A judge whose jobs end when the test says so. */
function slowJudge() {
  const jobs: {
    finish(matrix: EntryMatrix): void;
    fail(reason: unknown): void;
    progress(done: number, total: number): void;
    cancelled: boolean;
  }[] = [];
  const judgeFamily = (_family: Family, onProgress: (done: number, total: number) => void) => {
    let finish = (_matrix: EntryMatrix): void => {};
    let fail = (_reason: unknown): void => {};
    const result = new Promise<EntryMatrix>((resolve, reject) => {
      finish = resolve;
      fail = reject;
    });
    const job = { finish, fail, progress: onProgress, cancelled: false };
    jobs.push(job);
    return {
      result,
      cancel: () => {
        job.cancelled = true;
      },
    };
  };
  return { jobs, judgeFamily };
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

test('a job tells its progress and then its matrix', async () => {
  const store = makeResultsStore();
  const { jobs, judgeFamily } = slowJudge();
  makeJudging(store, { judgeFamily }).start(family);
  expect(store.getState()).toMatchObject({ phase: 'running', fits: null });
  jobs[0].progress(3, 12);
  expect(store.getState()).toMatchObject({ done: 3, total: 12 });
  jobs[0].finish(matrixOf('new'));
  await settled();
  expect(store.getState()).toMatchObject({ phase: 'done', fits: { openings: ['new'] } });
});

test('a new family cancels the job of the old one, and nothing of it comes through', async () => {
  const store = makeResultsStore();
  const { jobs, judgeFamily } = slowJudge();
  const judging = makeJudging(store, { judgeFamily });
  judging.start(family);
  judging.start(family);
  expect(jobs[0].cancelled).toBe(true);
  jobs[0].progress(9, 9);
  jobs[0].finish(matrixOf('old'));
  await settled();
  expect(store.getState()).toMatchObject({ phase: 'running', done: 0, fits: null });
  jobs[1].finish(matrixOf('new'));
  await settled();
  expect(store.getState().fits?.openings).toEqual(['new']);
});

test('a stopped job is cancelled and says so, even if its refusal comes later', async () => {
  const store = makeResultsStore();
  const { jobs, judgeFamily } = slowJudge();
  const judging = makeJudging(store, { judgeFamily });
  judging.start(family);
  judging.stop();
  expect(jobs[0].cancelled).toBe(true);
  jobs[0].fail(new Error('cancelled'));
  await settled();
  expect(store.getState().phase).toBe('stopped');
});

test('a job that fails says why', async () => {
  const store = makeResultsStore();
  const { jobs, judgeFamily } = slowJudge();
  makeJudging(store, { judgeFamily }).start(family);
  jobs[0].fail(new Error('the worker could not be started'));
  await settled();
  expect(store.getState()).toMatchObject({ phase: 'failed', trouble: 'the worker could not be started' });
});

test('a browser that allows no worker is a failed judgement, not a broken window', () => {
  const store = makeResultsStore();
  const judgeFamily = () => {
    throw new Error('workers are forbidden here');
  };
  makeJudging(store, { judgeFamily }).start(family);
  expect(store.getState()).toMatchObject({ phase: 'failed', trouble: 'workers are forbidden here' });
});

test('a finished judgement cannot be stopped any more', async () => {
  const store = makeResultsStore();
  const { jobs, judgeFamily } = slowJudge();
  const judging = makeJudging(store, { judgeFamily });
  judging.start(family);
  jobs[0].finish(matrixOf('new'));
  await settled();
  judging.stop();
  expect(store.getState().phase).toBe('done');
});
