import type { Family } from '../../../family/family.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import type { Units } from '../../../family/length-text.ts';
import type { TeachingKnowledge } from '../../../teach/teaching-knowledge.ts';
import { type ConditionsState, conditionsFor } from '../conditions-state.ts';
import type { Doors } from '../doors.ts';
import { pairSentence } from '../pair-sentence.ts';

/** What the knowledge is made of: all that may change while a lesson is shown. */
export interface TaughtNow {
  readonly family: Family;
  readonly fits: KnownFits | null;
  readonly conditions: ConditionsState;
  readonly units: Units;
}

/** What the window knows of the family now, as the lesson and the quiz ask for it. */
export function knowledgeForTeaching(
  doors: Pick<Doors, 'explainPlacement' | 'fitSentence' | 'shapesUnder'>,
  { family, fits, conditions, units }: TaughtNow,
): TeachingKnowledge {
  const rows = new Map(fits?.profiles.map((id, i) => [id, i]));
  const columns = new Map(fits?.openings.map((id, k) => [id, k]));
  const profiles = new Map(family.profiles.map((profile) => [profile.id, profile]));
  const fitOf: TeachingKnowledge['fitOf'] = (entrantId, openingId) =>
    fits?.fits[rows.get(entrantId) ?? -1]?.[columns.get(openingId) ?? -1];
  const sentence = (entrantId: string, openingId: string) => {
    const entrant = profiles.get(entrantId);
    const opening = profiles.get(openingId);
    const fit = fitOf(entrantId, openingId);
    if (!entrant || !opening || !fit) return '';
    return pairSentence(doors, { entrant, opening, fit, conditions: conditionsFor(conditions, family) }, units);
  };
  return { family, fitOf, sentence };
}
