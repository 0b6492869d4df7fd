import { entryMatrix, type EntryMatrix } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import { runInSlices, type Job } from './job.ts';

/** The whole matrix of a family. */
export const fitFamily: Job<{ family: Family }, EntryMatrix> = ({ family }, context) => runInSlices(entryMatrix(family), context);
