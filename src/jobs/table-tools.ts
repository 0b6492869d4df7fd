import type { ThicknessCurve } from '../gauge/thickness-curve.ts';
import { type ToolTable, tablingTools } from '../gauge/tool-table.ts';
import type { Profile } from '../profile/profile.ts';
import { type Job, runInSlices } from './job.ts';

/** Tools, and the openings that they are to be judged in, with their curves. */
export interface ToolsQuestion {
  readonly tools: readonly Profile[];
  readonly openings: readonly Profile[];
  /** Of the openings; the limit of tilt is theirs. */
  readonly curves: readonly ThicknessCurve[];
  /** Nanometres. */
  readonly runningClearance: number;
}

/**
 * What each tool does in each opening.
 *
 * @check tests/unit/jobs/gauge-jobs.test.ts
 */
export const tableTools: Job<ToolsQuestion, ToolTable> = ({ tools, openings, curves, runningClearance }, context) =>
  runInSlices(tablingTools(tools, openings, curves, runningClearance), context);
