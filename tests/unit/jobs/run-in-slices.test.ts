import { describe, expect, test } from 'vitest';
import { JobCancelled, type JobContext, runInSlices } from '../../../src/jobs/job.ts';

/** A shell with a clock of its own: every look at the clock costs `tick` milliseconds. */
function shell(tick: number, cancelAfter = Number.POSITIVE_INFINITY) {
  const told: [number, number][] = [];
  let time = 0;
  let pauses = 0;
  const context: JobContext = {
    progress: (done, total) => void told.push([done, total]),
    cancelled: () => pauses > cancelAfter,
    pause: async () => void pauses++,
    now: () => (time += tick),
  };
  return { context, told, pausesMade: () => pauses };
}

/** Counts to `total` and remembers how far it came. */
function counting(total: number) {
  const state = { reached: 0 };
  function* steps(): Generator<{ done: number; total: number }, string, void> {
    for (let done = 1; done <= total; done++) {
      state.reached = done;
      yield { done, total };
    }
    return 'counted';
  }
  return { state, steps: steps() };
}

describe('running a job in slices', () => {
  test('gives the result of the whole run', async () => {
    const { steps, state } = counting(50);
    await expect(runInSlices(steps, shell(1).context)).resolves.toBe('counted');
    expect(state.reached).toBe(50);
  });

  test('tells progress that rises to the total, with a pause for the shell each time', async () => {
    const { context, told, pausesMade } = shell(30);
    await runInSlices(counting(20).steps, context);
    expect(told.length).toBeGreaterThan(3);
    expect(told.map(([done]) => done)).toEqual([...told].map(([done]) => done).sort((a, b) => a - b));
    expect(told.every(([done, total]) => done <= total && total === 20)).toBe(true);
    expect(pausesMade()).toBe(told.length);
  });

  test('does not stop for breath after every step: short steps share a slice', async () => {
    const { context, told } = shell(0.1);
    await runInSlices(counting(1000).steps, context);
    expect(told.length).toBeLessThan(10);
  });

  test('cancelled, it throws and does no further step', async () => {
    const { context } = shell(30, 2);
    const { steps, state } = counting(1000);
    await expect(runInSlices(steps, context)).rejects.toBeInstanceOf(JobCancelled);
    expect(state.reached).toBeLessThan(20);
  });

  test('between two looks at cancel lies no more than a slice and one step', async () => {
    let now = 0;
    let looked = 0;
    let longest = 0;
    const context: JobContext = {
      progress: () => {},
      cancelled: () => {
        longest = Math.max(longest, now - looked);
        looked = now;
        return false;
      },
      pause: () => Promise.resolve(),
      now: () => now,
    };
    function* steps(): Generator<{ done: number; total: number }, number, void> {
      for (let done = 1; done <= 100; done++) {
        now += 10;
        yield { done, total: 100 };
      }
      return 100;
    }
    await runInSlices(steps(), context);
    expect(looked).toBeGreaterThan(0);
    expect(longest).toBeLessThanOrEqual(60);
  });

  test('a fault of the work itself comes through as it is', async () => {
    // biome-ignore lint/correctness/useYield: it breaks before its first step
    function* broken(): Generator<{ done: number; total: number }, string, void> {
      throw new RangeError('broken');
    }
    await expect(runInSlices(broken(), shell(1).context)).rejects.toThrow('broken');
  });
});
