import { type NearestPlan, nearestPlans } from '../plan/nearest-plan.ts';
import { type Job, runInSlices } from './job.ts';
import type { SolveInput } from './solve-plan.ts';

/** What can be done where a table needs more sites than the blade has; may be stopped between two tries. */
export const findNearestPlans: Job<SolveInput, NearestPlan[]> = ({ table, options }, context) =>
  runInSlices(nearestPlans(table, options), context);
