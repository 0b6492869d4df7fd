import type { JobInput, JobName, JobOutput } from '../jobs/catalogue.ts';
import { JobCancelled } from '../jobs/job.ts';
import type { FromWorker, ToWorker } from './messages.ts';

/** A job that runs in another thread. */
export interface RunningJob<Output> {
  /** Rejects with {@link JobCancelled} after `cancel`, with an Error where the job failed. */
  readonly result: Promise<Output>;
  cancel(): void;
  /** As `cancel`, for an answer that another question took the place of: a thread that is kept stays, and gets round to it. */
  giveWay(): void;
}

/** What the page wants to hear while a job runs. */
export interface JobListener {
  onProgress?(done: number, total: number): void;
  /** Answers that are ready before the whole result; what they are is the job's affair. */
  onPart?(value: unknown): void;
  /** A thread for this job only, which ends with it: for input that may keep a thread busy until it is ended. */
  readonly alone?: boolean;
  /** Name of a thread that stays for all jobs called by it, with what they keep and have loaded. */
  readonly keptAs?: string;
}

/** A worker that does not stop by itself within this time after a cancel is ended, milliseconds. */
const PATIENCE_MS = 150;

interface Waiting {
  readonly name: JobName;
  readonly input: unknown;
  resolve(output: unknown): void;
  reject(error: Error): void;
  listener: JobListener;
}

/** One thread with the jobs that it has in hand. */
class JobThread {
  readonly jobs = new Map<number, Waiting>();
  isEnded = false;
  private readonly worker = new Worker(new URL('./job-worker.ts', import.meta.url), { type: 'module' });

  constructor() {
    this.worker.onmessage = ({ data }: MessageEvent<FromWorker>) => this.receive(data);
    this.worker.onerror = (event) => this.end(new Error(event.message || 'the worker could not be started'));
  }

  run(id: number, waiting: Waiting): void {
    this.jobs.set(id, waiting);
    this.post({ kind: 'run', id, name: waiting.name, input: waiting.input });
  }

  /** Asks the job to stop when it next listens. */
  ask(id: number): void {
    this.post({ kind: 'cancel', id });
  }

  /** Asks the job to stop; ends the thread, and whatever else runs on it, where it does not listen. */
  cancel(id: number): void {
    this.ask(id);
    setTimeout(() => {
      if (this.jobs.has(id)) this.end(new JobCancelled());
    }, PATIENCE_MS);
  }

  /** Ends the thread once nothing is asked of it any more. */
  leave(): void {
    this.isEnded = true;
    this.worker.terminate();
  }

  private post(message: ToWorker): void {
    this.worker.postMessage(message);
  }

  private receive(message: FromWorker): void {
    const waiting = this.jobs.get(message.id);
    if (!waiting) return;
    const { listener } = waiting;
    if (message.kind === 'progress') listener.onProgress?.(message.done, message.total);
    if (message.kind === 'part') listener.onPart?.(message.value);
    if (message.kind === 'progress' || message.kind === 'part') return;
    this.jobs.delete(message.id);
    if (message.kind === 'result') waiting.resolve(message.output);
    else waiting.reject(message.cancelled ? new JobCancelled() : new Error(message.message));
  }

  private end(error: Error): void {
    this.leave();
    const place = threads.indexOf(this);
    if (place >= 0) threads.splice(place, 1);
    for (const waiting of this.jobs.values()) waiting.reject(error);
    this.jobs.clear();
  }
}

/** A thread that stays. It is ended only by a cancel that is not listened to; then the next one goes on with its other jobs. */
class KeptThread {
  private thread: JobThread | null = null;
  private readonly givenWay = new Set<number>();

  run(id: number, waiting: Waiting): void {
    if (!this.thread || this.thread.isEnded) this.thread = new JobThread();
    this.thread.run(id, waiting);
  }

  giveWay(id: number): void {
    const { thread } = this;
    if (!thread?.jobs.has(id)) return;
    this.givenWay.add(id);
    thread.ask(id);
  }

  cancel(id: number): void {
    this.giveWay(id);
    setTimeout(() => {
      if (this.thread?.jobs.has(id)) this.replace(this.thread);
    }, PATIENCE_MS);
  }

  private replace(thread: JobThread): void {
    thread.leave();
    for (const [id, waiting] of thread.jobs) {
      if (this.givenWay.has(id)) waiting.reject(new JobCancelled());
      else this.run(id, waiting);
    }
    this.givenWay.clear();
  }
}

const keptThreads = new Map<string, KeptThread>();

function keptThread(name: string): KeptThread {
  const thread = keptThreads.get(name) ?? new KeptThread();
  keptThreads.set(name, thread);
  return thread;
}

const threads: JobThread[] = [];
let lastId = 0;

/** How many threads run jobs at once. */
export function threadCount(): number {
  return Math.min(4, navigator.hardwareConcurrency || 1);
}

/**
 * Runs a job of the catalogue in another thread; threads are made as needed, one a core and at most four.
 * The input is copied to the thread, so it must be plain data.
 */
export function startJob<N extends JobName>(
  name: N,
  input: JobInput<N>,
  listener: JobListener = {},
): RunningJob<JobOutput<N>> {
  const id = ++lastId;
  const kept = listener.keptAs === undefined ? null : keptThread(listener.keptAs);
  const thread = kept ?? threadFor(listener);
  const result = new Promise<JobOutput<N>>((resolve, reject) =>
    thread.run(id, { name, input, resolve: (output) => resolve(output as JobOutput<N>), reject, listener }),
  );
  if (thread instanceof JobThread && listener.alone) result.catch(() => {}).finally(() => thread.leave());
  const cancel = () => thread.cancel(id);
  return { result, cancel, giveWay: kept ? () => kept.giveWay(id) : cancel };
}

function threadFor({ alone }: JobListener): JobThread {
  return alone ? new JobThread() : freeThread();
}

/** An idle thread, a new one while there are cores, or the one with the fewest jobs. */
function freeThread(): JobThread {
  const idle = threads.find((thread) => thread.jobs.size === 0);
  if (idle) return idle;
  if (threads.length < threadCount()) {
    const made = new JobThread();
    threads.push(made);
    return made;
  }
  return threads.reduce((least, thread) => (thread.jobs.size < least.jobs.size ? thread : least));
}
