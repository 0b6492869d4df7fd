import { type EntryMatrix, entryMatrix } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import { type Job, runInSlices } from './job.ts';

/** The whole matrix of a family. */
export const fitFamily: Job<{ family: Family }, EntryMatrix> = ({ family }, context) =>
  runInSlices(entryMatrix(family), context);
