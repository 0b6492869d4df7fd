/** A job on its way in another thread; its result rejects with JobCancelled once it was cancelled. */
export interface JobOnItsWay<Output> {
  readonly result: Promise<Output>;
  cancel(): void;
}
