/** What a running job may ask of whoever runs it: a worker, a command line, a test. */
export interface JobContext {
  /** Told as often as the job likes; the shell decides what to show. */
  progress(done: number, total: number): void;
  /** Given answers that are ready before the whole result, where the shell wants them. */
  part?(value: unknown): void;
  /** True once somebody has asked the job to stop. */
  cancelled(): boolean;
  /** Lets the shell handle what has arrived meanwhile, a cancel for example. */
  pause(): Promise<void>;
  /** Milliseconds from any fixed moment. */
  now(): number;
}

/** An operation by value: the same from the app, a worker, the command line and tests. */
export type Job<Input, Output> = (input: Input, context: JobContext) => Promise<Output>;

/** Thrown by a job that was asked to stop: no result, nothing changed. */
export class JobCancelled extends Error {
  constructor() {
    super('cancelled');
    this.name = 'JobCancelled';
  }
}

/** Thrown by a job that cannot do what it was asked for; the message is for people. */
export class JobRefused extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'JobRefused';
  }
}

/** Longest time between two looks at whether the job was cancelled, milliseconds. */
const SLICE_MS = 40;

/**
 * Runs a generator to its end in slices short enough to be cancelled, telling progress between them.
 *
 * @throws JobCancelled when the context says so.
 */
export async function runInSlices<Output>(
  steps: Generator<{ done: number; total: number }, Output, void>,
  context: JobContext,
): Promise<Output> {
  let until = context.now() + SLICE_MS;
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (context.now() < until) continue;
    context.progress(step.value.done, step.value.total);
    await context.pause();
    if (context.cancelled()) throw new JobCancelled();
    until = context.now() + SLICE_MS;
  }
}
