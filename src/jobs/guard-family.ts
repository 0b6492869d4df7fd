import type { EntryMatrix } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import { type GuardMargins, guardMargins } from '../family/guard-margin.ts';
import { type Job, runInSlices } from './job.ts';

/** The guard margin and the smallest clearance of a judged family. */
export const guardFamily: Job<{ family: Family; matrix: EntryMatrix }, GuardMargins> = ({ family, matrix }, context) =>
  runInSlices(guardMargins(family, matrix), context);
