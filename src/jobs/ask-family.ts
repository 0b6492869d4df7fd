import { entryMatrix } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import { PairRefused } from '../family/pair-refused.ts';
import type { Answer } from '../names/answer.ts';
import { ask } from '../names/ask.ts';
import { knowFamily } from '../names/know-family.ts';
import type { Knowledge } from '../names/knowledge.ts';
import { misleadingNames } from '../names/misleading.ts';
import type { MisleadingName } from '../names/misleading-name.ts';
import type { Sense } from '../names/register.ts';
import { bandIn, lengthIn } from '../names/write-lengths.ts';
import { type Job, type JobContext, JobRefused, runInSlices } from './job.ts';

/** Judges a family new and upright, and answers a question about it. Refused where a pair cannot be judged. */
export const askFamily: Job<{ family: Family; question: string }, Answer> = async ({ family, question }, context) =>
  ask(question, await judged(family, context));

/** The register of a family, judged new and upright, and the names in it that mislead. */
export const listNames: Job<
  { family: Family },
  { readonly senses: readonly Sense[]; readonly misleading: readonly MisleadingName[] }
> = async ({ family }, context) => {
  const knowledge = await judged(family, context);
  return { senses: knowledge.register.senses, misleading: misleadingNames(knowledge) };
};

async function judged(family: Family, context: JobContext): Promise<Knowledge> {
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
