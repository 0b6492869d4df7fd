import { commonPassage, type PassageInput } from '../passage/find-passage.ts';
import type { Passage } from '../passage/passage.ts';
import { type Job, runInSlices } from './job.ts';

/** What some keyways have in common, the widest blank that passes all of them, and how it goes into all others. */
export const findPassage: Job<PassageInput, Passage> = (input, context) => runInSlices(commonPassage(input), context);
