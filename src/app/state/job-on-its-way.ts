/** A job on its way in another thread; its result rejects with JobCancelled once it was cancelled. */
export interface JobOnItsWay<Output> {
  readonly result: Promise<Output>;
  cancel(): void;
  /** As `cancel`, where another question took its place: what it runs on may stay. Where not given, it is cancelled. */
  giveWay?(): void;
}

/** Gives up a job that another takes the place of. */
export function giveUp(job: JobOnItsWay<unknown>): void {
  if (job.giveWay) job.giveWay();
  else job.cancel();
}
