import type { Family } from '../../../family/family.ts';
import { isMeasured } from '../../../family/fit-cache.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { Knowledge } from '../../../names/knowledge.ts';
import { registerOf } from '../../../names/register.ts';
import { type ConditionsState, conditionsFor } from '../conditions-state.ts';
import type { Doors } from '../doors.ts';
import { readingText, type Units } from '../length-text.ts';
import { bandWriter } from '../pair-sentence.ts';

/** What answers depend on besides the question. */
export interface KnownNow {
  readonly family: Family;
  readonly fits: KnownFits | null;
  readonly conditions: ConditionsState;
  readonly units: Units;
}

type Explaining = Pick<Doors, 'explainPlacement' | 'shapesUnder' | 'blockedWords' | 'partName'>;

/** What a question line may know: the fits found so far, under the conditions in force, in the user's units. */
export function knowledgeNow(doors: Explaining, known: KnownNow): Knowledge {
  const { family, fits, units } = known;
  const rows = new Map(fits?.profiles.map((id, i) => [id, i]));
  const columns = new Map(fits?.openings.map((id, i) => [id, i]));
  const fitOf = (entrantId: string, openingId: string): Fit | undefined => {
    const [row, column] = [rows.get(entrantId), columns.get(openingId)];
    return row === undefined || column === undefined ? undefined : fits?.fits[row]?.[column];
  };
  return {
    family,
    register: registerOf(family),
    fitOf,
    reason: (entrantId, openingId) => reasonOf(doors, known, fitOf(entrantId, openingId), entrantId, openingId),
    length: (nm) => readingText(nm, units),
  };
}

/** Which ward blocks and how deep, or where the gap is narrowest; empty where that is not known. */
function reasonOf(
  doors: Explaining,
  { family, conditions, units }: KnownNow,
  fit: Fit | undefined,
  entrantId: string,
  openingId: string,
): string {
  const entrant = family.profiles.find(({ id }) => id === entrantId);
  const opening = family.profiles.find(({ id }) => id === openingId);
  if (!fit || !entrant || !opening || !isMeasured(fit)) return '';
  const wanted = conditionsFor(conditions, family);
  const shapes = wanted.wear > 0 ? doors.shapesUnder(opening.ring, entrant.ring, wanted) : null;
  const { collisions, contacts } = shapes
    ? doors.explainPlacement(shapes.opening, shapes.entrant, fit.placement)
    : doors.explainPlacement(opening.ring, entrant.ring, fit.placement);
  const length = (nm: number) => readingText(nm, units);
  if (fit.verdict === 'blocked') return doors.blockedWords(collisions, length, bandWriter(units));
  const [pinch] = contacts;
  return pinch && fit.clearance > 0 ? `the narrowest gap at the ${doors.partName(pinch)}` : '';
}
