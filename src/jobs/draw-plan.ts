import { drawWardPlan } from '../plan/draw-plan.ts';
import type { DrawnPlan, DrawPlanInput } from '../plan/drawn-plan.ts';
import { type Job, runInSlices } from './job.ts';

export type { DrawnPlan, DrawPlanInput };

/** A ward plan made into milled blanks and keyways, every pair judged within tolerance. */
export const drawPlan: Job<DrawPlanInput, DrawnPlan> = (input, context) => runInSlices(drawWardPlan(input), context);
