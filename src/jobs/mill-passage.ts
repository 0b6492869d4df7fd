import { type MillPassageInput, millPassage as milling } from '../passage/mill-passage.ts';
import type { Passage } from '../passage/passage.ts';
import { type Job, runInSlices } from './job.ts';

/** A passage with the largest blank that straight cutters can mill; null where there is none. */
export const millPassage: Job<MillPassageInput, Passage | null> = (input, context) =>
  runInSlices(milling(input), context);
