import { type EntryMatrix, entryMatrix } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import { PairRefused } from '../family/pair-refused.ts';
import type { Conditions } from '../fit/conditions.ts';
import { type Job, JobRefused, runInSlices } from './job.ts';

/** The whole matrix of a family; new parts held upright where no conditions are given. Refused where a pair cannot be judged. */
export const fitFamily: Job<{ family: Family; conditions?: Conditions }, EntryMatrix> = async (
  { family, conditions },
  context,
) => {
  try {
    return await runInSlices(entryMatrix(family, conditions), context);
  } catch (error) {
    if (error instanceof PairRefused) throw new JobRefused(error.message);
    throw error;
  }
};
