import type { EntryTable } from '../family/entry-table.ts';
import type { Family } from '../family/family.ts';
import { judgeEntryTable } from '../family/judge-entry-table.ts';
import { PairRefused } from '../family/pair-refused.ts';
import { type Job, JobRefused, runInSlices } from './job.ts';

/** What goes into what, new parts held upright, without margins. Refused where a pair cannot be judged. */
export const judgeTable: Job<{ family: Family }, EntryTable> = async ({ family }, context) => {
  try {
    return await runInSlices(judgeEntryTable(family), context);
  } catch (error) {
    if (error instanceof PairRefused) throw new JobRefused(error.message);
    throw error;
  }
};
