import type { Family } from '../family/family.ts';
import { misleadingNames } from '../names/misleading.ts';
import type { MisleadingName } from '../names/misleading-name.ts';
import type { Sense } from '../names/register.ts';
import { judgedKnowledge } from './ask-family.ts';
import type { Job } from './job.ts';

/** The register of a family, judged new and upright, and the names in it that mislead. */
export const listNames: Job<
  { family: Family },
  { readonly senses: readonly Sense[]; readonly misleading: readonly MisleadingName[] }
> = async ({ family }, context) => {
  const knowledge = await judgedKnowledge(family, context);
  return { senses: knowledge.register.senses, misleading: misleadingNames(knowledge) };
};
