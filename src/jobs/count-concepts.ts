import type { EntryTable } from '../family/entry-table.ts';
import { type ConceptCount, countingConcepts } from '../family/tiers.ts';
import { type Job, runInSlices } from './job.ts';

/** How large the concept lattice of a table is, counted up to `limit`; may be stopped at any time. */
export const countConceptsJob: Job<{ table: EntryTable; limit: number }, ConceptCount> = ({ table, limit }, context) =>
  runInSlices(countingConcepts(table, limit), context);
