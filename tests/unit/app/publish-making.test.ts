import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { MakingFile, makingFileOf } from '../../../src/app/state/publish/making-file.ts';
import { publishingOf } from '../../../src/app/state/publish/publishing.ts';
import { orderOf, USUAL_SHEET } from '../../../src/app/state/publish/sheet-choice.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { fakeDoors } from './fake-doors.ts';

const LESSON = readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8');

/** A job that the test ends. */
function heldJob<Output>() {
  let resolve: (output: Output) => void = () => {};
  let reject: (reason: unknown) => void = () => {};
  const result = new Promise<Output>((fulfil, refuse) => {
    resolve = fulfil;
    reject = refuse;
  });
  let cancelled = false;
  const cancel = () => {
    cancelled = true;
    reject(new JobCancelled());
  };
  return { job: { result, cancel }, resolve, isCancelled: () => cancelled };
}

test('a file is handed over once it is made, and what came of it is said', async () => {
  const making = new MakingFile();
  const { job, resolve } = heldJob<string>();
  let tell: (done: number, total: number) => void = () => {};
  const done = making.make({
    what: 'PDF',
    start: (told) => {
      tell = told;
      return job;
    },
    take: async (text) => `${text} is saved.`,
  });
  tell(2, 5);
  expect(making.store.getState()).toMatchObject({ phase: 'finding', what: 'PDF', done: 2, total: 5 });
  resolve('Chart.pdf');
  await done;
  expect(making.store.getState()).toMatchObject({ phase: 'idle', said: 'Chart.pdf is saved.' });
});

test('one that is stopped hands nothing over, and can be made again', async () => {
  const making = new MakingFile();
  const taken: string[] = [];
  const jobs = [heldJob<string>(), heldJob<string>()];
  let next = 0;
  const take = async (text: string) => {
    taken.push(text);
    return text;
  };
  const done = making.make({ what: 'PDF', start: () => jobs[next++].job, take });
  making.stop();
  await done;
  expect(jobs[0].isCancelled()).toBe(true);
  expect(making.store.getState().phase).toBe('stopped');
  making.again();
  jobs[1].resolve('second');
  await expect.poll(() => making.store.getState().said).toBe('second');
  expect(taken).toEqual(['second']);
});

test('another wish takes the place of the one on its way, which says nothing any more', async () => {
  const making = new MakingFile();
  const first = heldJob<string>();
  const second = heldJob<string>();
  const take = async (text: string) => text;
  const one = making.make({ what: 'PDF', start: () => first.job, take });
  const two = making.make({ what: 'SVG', start: () => second.job, take });
  await one;
  expect(first.isCancelled()).toBe(true);
  expect(making.store.getState()).toMatchObject({ phase: 'finding', what: 'SVG' });
  second.resolve('two');
  await two;
  expect(making.store.getState().said).toBe('two');
});

test.each([
  ['the thread', () => Promise.reject(new Error('no memory left')), async () => ''],
  ['handing over', () => Promise.resolve('x'), () => Promise.reject(new Error('no memory left'))],
])('a failure of %s is told in its own words', async (_what, result, take) => {
  const making = new MakingFile();
  await making.make<string>({ what: 'PDF', start: () => ({ result: result(), cancel: () => {} }), take });
  expect(making.store.getState()).toMatchObject({ phase: 'failed', trouble: 'no memory left' });
});

test('a browser without threads is told as a failure, not thrown', async () => {
  const making = new MakingFile();
  const start = () => {
    throw new Error('no threads here');
  };
  await making.make({ what: 'PDF', start, take: async () => '' });
  expect(making.store.getState()).toMatchObject({ phase: 'failed', trouble: 'no threads here' });
});

test('pages are laid out once for an order, and anew for another family or another order', () => {
  const { doors, sheets } = fakeDoors();
  const session = makeSession(doors, null);
  const publishing = publishingOf(session);
  const family = demoFamily();
  const subjects = {
    openingId: null,
    entrantId: null,
    wholeFamily: false,
    holderId: null,
    everyCard: null,
    units: 'mm',
    today: null,
  } as const;
  const ask = (of: typeof family, paper: 'A4' | 'A3') =>
    publishing.ask({ family: of, sheet: orderOf({ ...USUAL_SHEET, paper }, subjects, of), as: 'pages' });
  ask(family, 'A4');
  ask(family, 'A4');
  expect(sheets).toHaveLength(1);
  ask(family, 'A3');
  expect(sheets[0].cancelled).toBe(true);
  ask({ ...family }, 'A3');
  expect(sheets).toHaveLength(3);
});

test('what was said of a file can be taken back, without touching one on its way', async () => {
  const making = new MakingFile();
  const first = heldJob<string>();
  first.resolve('Chart.pdf');
  await making.make({ what: 'PDF', start: () => first.job, take: async (text) => `${text} is saved.` });
  expect(making.store.getState().said).toBe('Chart.pdf is saved.');
  making.forget();
  expect(making.store.getState().said).toBe('');
  const { job, resolve } = heldJob<string>();
  const done = making.make({ what: 'PDF', start: () => job, take: async (text) => `${text} is saved.` });
  making.forget();
  expect(making.store.getState().phase).toBe('finding');
  resolve('Matrix.pdf');
  await done;
  expect(making.store.getState().said).toBe('Matrix.pdf is saved.');
});

test('a stopped or failed file of something else cannot be made again', async () => {
  const making = new MakingFile();
  let begun = 0;
  const stopped = heldJob<string>();
  const start = () => {
    begun += 1;
    return stopped.job;
  };
  const take = async (text: string) => text;
  const done = making.make({ what: 'STL', start, take });
  making.stop();
  await done;
  making.forget();
  expect(making.store.getState().phase).toBe('idle');
  making.again();
  expect(begun).toBe(1);
  // One that is still on its way when another is shown has no key that would make it again, either.
  const late = heldJob<string>();
  const other = making.make({ what: 'STL', start: () => late.job, take });
  making.forget();
  making.stop();
  await other;
  expect(making.store.getState()).toMatchObject({ phase: 'idle', said: 'Stopped: no STL was saved.' });
  const failing = making.make({
    what: 'STL',
    start: () => ({ result: Promise.reject(new Error('no memory left')), cancel: () => {} }),
    take,
  });
  making.forget();
  await failing;
  expect(making.store.getState()).toMatchObject({ phase: 'idle', said: 'No STL was saved: no memory left.' });
});

test('with another family a file on its way is given up, and nothing is told of it', async () => {
  const { doors } = fakeDoors();
  const session = makeSession(doors, null);
  const making = makingFileOf(session);
  const { job, resolve, isCancelled } = heldJob<string>();
  const taken: string[] = [];
  const take = async (text: string) => {
    taken.push(text);
    return text;
  };
  const done = making.make({ what: 'PDF', start: () => job, take });
  expect(openText(session.documents, doors, LESSON, 'lesson.json')).toBe(true);
  expect(isCancelled()).toBe(true);
  resolve('Chart.pdf');
  await done;
  expect(taken).toEqual([]);
  expect(making.store.getState()).toMatchObject({ phase: 'idle', said: '' });
});
