import { entryMatrix } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import { PairRefused } from '../family/pair-refused.ts';
import type { Answer } from '../names/answer.ts';
import { ask } from '../names/ask.ts';
import { knowFamily } from '../names/know-family.ts';
import type { Knowledge } from '../names/knowledge.ts';
import { bandIn, lengthIn } from '../names/write-lengths.ts';
import { type Job, type JobContext, JobRefused, runInSlices } from './job.ts';

/** Judges a family new and upright, and answers a question about it. Refused where a pair cannot be judged. */
export const askFamily: Job<{ family: Family; question: string }, Answer> = async ({ family, question }, context) =>
  ask(question, await judgedKnowledge(family, context));

/** What is known of a family judged new and upright; refused where a pair cannot be judged. */
export async function judgedKnowledge(family: Family, context: JobContext): Promise<Knowledge> {
  try {
    const { profiles, openings, fits } = await runInSlices(entryMatrix(family), context);
    const rows = new Map(profiles.map((id, i) => [id, fits[i]]));
    const columns = new Map(openings.map((id, k) => [id, k]));
    const fitOf = (entrant: string, opening: string) => rows.get(entrant)?.[columns.get(opening) ?? -1];
    return knowFamily(family, fitOf, lengthIn(family.units), bandIn(family.units));
  } catch (error) {
    if (error instanceof PairRefused) throw new JobRefused(error.message);
    throw error;
  }
}
