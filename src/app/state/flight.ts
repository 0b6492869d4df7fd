import { JobCancelled } from '../../jobs/job.ts';
import type { JobOnItsWay } from './doors.ts';
import { troubleText } from './trouble-text.ts';

/** How jobs that were started together ended: all came back, one was cancelled, or one failed for the reason given. */
export type Ending = { readonly kind: 'landed' | 'cancelled' } | { readonly kind: 'failed'; readonly trouble: string };

/** Jobs that were started together. */
export interface Flight {
  /** Asks all of them to stop; the ending still comes, once the last one has heard it. */
  cancel(): void;
}

/**
 * Starts jobs side by side and tells once how they ended, never before this function has returned. When one cannot be
 * started or fails, the others are cancelled.
 *
 * @check tests/unit/app/flight.test.ts
 */
export function fly(starters: readonly (() => JobOnItsWay<unknown>)[], onEnd: (ending: Ending) => void): Flight {
  const jobs: JobOnItsWay<unknown>[] = [];
  const troubles: unknown[] = [];
  let cancelled = false;
  const cancel = () => {
    for (const job of jobs) job.cancel();
  };
  const fail = (reason: unknown) => {
    if (reason instanceof JobCancelled) cancelled = true;
    else troubles.push(reason);
    if (troubles.length === 1) cancel();
  };
  try {
    for (const start of starters) jobs.push(start());
  } catch (reason) {
    // A browser that allows no thread says so by throwing at once.
    fail(reason);
  }
  Promise.all(jobs.map(({ result }) => result.catch(fail))).then(() => {
    if (troubles.length > 0) onEnd({ kind: 'failed', trouble: troubleText(troubles[0]) });
    else onEnd({ kind: cancelled ? 'cancelled' : 'landed' });
  });
  return { cancel };
}
