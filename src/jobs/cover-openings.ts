import { coveringTools, type ToolCover } from '../gauge/cover-tools.ts';
import type { ToolTable } from '../gauge/tool-table.ts';
import { type Job, runInSlices } from './job.ts';

/** What is known of tools, and the openings to be covered. */
export interface CoverQuestion {
  readonly table: ToolTable;
  /** Ids of openings. */
  readonly chosen: readonly string[];
}

/**
 * The fewest tools that enter all chosen openings between them; progress in looks, cancelled between them.
 *
 * @check tests/unit/jobs/gauge-jobs.test.ts
 */
export const coverOpenings: Job<CoverQuestion, ToolCover> = ({ table, chosen }, context) =>
  runInSlices(coveringTools(table, chosen), context);
