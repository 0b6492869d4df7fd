// Threads as the browser gives them, by a stand-in that does what a test tells it: HTML Living Standard, "Web workers".
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { JobCancelled } from '../../../src/jobs/job.ts';
import type { FromWorker, ToWorker } from '../../../src/workers/messages.ts';
import { startJob } from '../../../src/workers/start-job.ts';

class StandIn {
  static made: StandIn[] = [];
  onmessage: ((event: { data: FromWorker }) => void) | null = null;
  onerror: ((event: { message: string }) => void) | null = null;
  readonly got: ToWorker[] = [];
  ended = false;

  constructor() {
    StandIn.made.push(this);
  }

  postMessage(message: ToWorker): void {
    this.got.push(message);
  }

  terminate(): void {
    this.ended = true;
  }

  /** The numbers of the jobs that it was told to run, and to give up. */
  told(kind: ToWorker['kind']): number[] {
    return this.got.flatMap((message) => (message.kind === kind ? [message.id] : []));
  }

  answer(message: FromWorker): void {
    if (!this.ended) this.onmessage?.({ data: message });
  }
}

beforeEach(() => {
  StandIn.made = [];
  vi.stubGlobal('Worker', StandIn);
  vi.useFakeTimers();
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const begin = (keptAs: string) => startJob('listNames', [] as never, { keptAs });

test('a kept thread is there for the next job, also after one that gave way and took its time', async () => {
  const first = begin('a');
  const [thread] = StandIn.made;
  const given = expect(first.result).rejects.toThrow(JobCancelled);
  first.giveWay();
  const second = begin('a');
  vi.advanceTimersByTime(5000);
  expect([StandIn.made.length, thread.ended]).toEqual([1, false]);
  const [one, two] = thread.told('run');
  expect(thread.told('cancel')).toEqual([one]);
  thread.answer({ kind: 'failed', id: one, message: 'cancelled', cancelled: true });
  thread.answer({ kind: 'result', id: two, output: 'pages' });
  await given;
  await expect(second.result).resolves.toBe('pages');
});

test('a cancel that is not listened to ends it; other jobs begin anew in the next one, those that gave way do not', async () => {
  const given = begin('b');
  const stopped = begin('b');
  const other = begin('b');
  const ends = [given, stopped].map(({ result }) => expect(result).rejects.toThrow(JobCancelled));
  given.giveWay();
  stopped.cancel();
  vi.advanceTimersByTime(5000);
  await Promise.all(ends);
  const [thread, next] = StandIn.made;
  expect(thread.ended).toBe(true);
  expect(next.told('run')).toEqual([thread.told('run')[2]]);
  next.answer({ kind: 'result', id: next.told('run')[0], output: 'file' });
  await expect(other.result).resolves.toBe('file');
});

test('a cancel that is listened to leaves the thread; one that broke is replaced by the next job', async () => {
  const stopped = begin('c');
  const end = expect(stopped.result).rejects.toThrow(JobCancelled);
  stopped.cancel();
  const [thread] = StandIn.made;
  thread.answer({ kind: 'failed', id: thread.told('run')[0], message: 'cancelled', cancelled: true });
  vi.advanceTimersByTime(5000);
  await end;
  expect(thread.ended).toBe(false);
  const broken = begin('c');
  const failing = expect(broken.result).rejects.toThrow('no memory');
  thread.onerror?.({ message: 'no memory' });
  await failing;
  begin('c').result.catch(() => {});
  expect(StandIn.made).toHaveLength(2);
});
