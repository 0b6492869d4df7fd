import { type EntryMatrix, entryMatrix } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import type { Conditions } from '../fit/conditions.ts';
import { type Job, runInSlices } from './job.ts';

/** The whole matrix of a family; new parts held upright where no conditions are given. */
export const fitFamily: Job<{ family: Family; conditions?: Conditions }, EntryMatrix> = (
  { family, conditions },
  context,
) => runInSlices(entryMatrix(family, conditions), context);
