import type { GrowReport } from '../plan/grow.ts';
import { type GrowInput, growFamily as growing } from '../plan/grow-family.ts';
import { type Job, runInSlices } from './job.ts';

/** How many further sections a family has room for, and the next ones, drawn and confirmed. */
export const growFamily: Job<GrowInput, GrowReport> = (input, context) => runInSlices(growing(input), context);
