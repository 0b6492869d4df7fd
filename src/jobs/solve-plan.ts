import type { AccessTable } from '../plan/access-table.ts';
import { solveOn } from '../plan/solve-on.ts';
import type { SolveOptions, WardPlan } from '../plan/ward-plan.ts';
import { type Job, JobCancelled, JobRefused } from './job.ts';

/** What the solver is given. */
export interface SolveInput {
  readonly table: AccessTable;
  readonly options: SolveOptions;
}

/**
 * The wards of a plan: at once by construction, then by search and proof for as many seconds as the options say. Parts
 * are better plans, or better known ones, as they come; progress is time; the result is the last plan, proved or with
 * its gap.
 *
 * @throws JobRefused for a table that is none.
 * @check tests/unit/jobs/solve-plan.test.ts
 */
export const solvePlan: Job<SolveInput, WardPlan> = async ({ table, options }, context) => {
  const solved = await solveOn(table, options, {
    now: () => context.now(),
    cancelled: () => context.cancelled(),
    pause: () => context.pause(),
    tell: (done) => context.progress(Math.min(done, options.seconds), options.seconds),
    better: (plan) => context.part?.(plan),
  });
  if (context.cancelled()) throw new JobCancelled();
  if (!solved)
    throw new JobRefused('the table is none: its rows differ in length or hold other marks than 1, 0 and free');
  return solved;
};
