/** The worker's side: runs jobs of the catalogue one after another or interleaved, and answers by message. */
import { catalogue } from '../jobs/catalogue.ts';
import { type Job, JobCancelled, type JobContext } from '../jobs/job.ts';
import type { FromWorker, ToWorker } from './messages.ts';

const cancelled = new Set<number>();

self.onmessage = ({ data }: MessageEvent<ToWorker>) => {
  if (data.kind === 'cancel') cancelled.add(data.id);
  else void run(data.id, catalogue[data.name] as Job<unknown, unknown>, data.input);
};

async function run(id: number, job: Job<unknown, unknown>, input: unknown): Promise<void> {
  const context: JobContext = {
    progress: (done, total) => send({ kind: 'progress', id, done, total }),
    part: (value) => send({ kind: 'part', id, value }),
    cancelled: () => cancelled.has(id),
    pause: nextTurn,
    now: () => performance.now(),
  };
  try {
    send({ kind: 'result', id, output: await job(input, context) });
  } catch (error) {
    send({
      kind: 'failed',
      id,
      message: error instanceof Error ? error.message : String(error),
      cancelled: error instanceof JobCancelled,
    });
  }
  cancelled.delete(id);
}

const turns = new MessageChannel();
const waiting: (() => void)[] = [];
turns.port1.onmessage = () => waiting.shift()?.();

/** Lets waiting messages in; unlike a timer it does not wait a minimum time. */
function nextTurn(): Promise<void> {
  return new Promise((resolve) => {
    waiting.push(resolve);
    turns.port2.postMessage(0);
  });
}

function send(message: FromWorker): void {
  self.postMessage(message);
}
