import { type Identification, identifying, type Question } from '../identify/identify.ts';
import { type Job, runInSlices } from './job.ts';

/** Ranks the sections of a family by how close an unknown outline lies to them; cancelled between two sections. */
export const identifyOutline: Job<Question, Identification> = (question, context) =>
  runInSlices(identifying(question), context);
