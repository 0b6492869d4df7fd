import { expect, test } from 'vitest';
import type { JobOnItsWay } from '../../../src/app/state/doors.ts';
import { type Ending, fly } from '../../../src/app/state/flight.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { turn } from './fake-doors.ts';

/** A flight of jobs of which each ends as the test says. */
function flown(count: number) {
  const jobs = Array.from({ length: count }, () => {
    let finish = () => {};
    let fail = (_reason: unknown) => {};
    const result = new Promise<void>((resolve, reject) => {
      finish = resolve;
      fail = reject;
    });
    const job = { result, finish, fail, cancelled: 0, cancel: () => void job.cancelled++ };
    return job;
  });
  const endings: Ending[] = [];
  const starters = jobs.map((job) => (): JobOnItsWay<unknown> => job);
  const flight = fly(starters, (ending) => endings.push(ending));
  return { jobs, endings, flight };
}

test('it lands when the last job is back, and only once', async () => {
  const { jobs, endings } = flown(2);
  jobs[0].finish();
  await turn();
  expect(endings).toEqual([]);
  jobs[1].finish();
  await turn();
  expect(endings).toEqual([{ kind: 'landed' }]);
});

test('a cancel reaches every job, and the ending waits for the last to hear it', async () => {
  const { jobs, endings, flight } = flown(2);
  flight.cancel();
  expect(jobs.map(({ cancelled }) => cancelled)).toEqual([1, 1]);
  jobs[0].fail(new JobCancelled());
  await turn();
  expect(endings).toEqual([]);
  jobs[1].finish();
  await turn();
  expect(endings).toEqual([{ kind: 'cancelled' }]);
});

test('the first failure is told, and the others are cancelled', async () => {
  const { jobs, endings } = flown(3);
  jobs[1].fail(new Error('out of memory'));
  await turn();
  expect(jobs.map(({ cancelled }) => cancelled)).toEqual([1, 1, 1]);
  jobs[0].fail(new JobCancelled());
  jobs[2].fail('also lost');
  await turn();
  expect(endings).toEqual([{ kind: 'failed', trouble: 'out of memory' }]);
});

test('a job that cannot even be started fails the flight, after the caller has it in hand', async () => {
  const endings: Ending[] = [];
  let cancels = 0;
  const running: JobOnItsWay<unknown> = { result: Promise.resolve(), cancel: () => void cancels++ };
  const refuse = () => {
    throw new Error('no threads here');
  };
  fly([() => running, refuse], (ending) => endings.push(ending));
  expect(endings).toEqual([]);
  await turn();
  expect(cancels).toBe(1);
  expect(endings).toEqual([{ kind: 'failed', trouble: 'no threads here' }]);
});

test('a flight of no jobs lands', async () => {
  const { endings } = flown(0);
  await turn();
  expect(endings).toEqual([{ kind: 'landed' }]);
});
