import type { Family } from '../../../family/family.ts';
import { isMeasured } from '../../../family/fit-cache.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import { readingText, type Units } from '../../../family/length-text.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { Knowledge } from '../../../names/knowledge.ts';
import { registerOf } from '../../../names/register.ts';
import { type ConditionsState, conditionsFor } from '../conditions-state.ts';
import type { Doors } from '../doors.ts';
import { bandWriter } from '../pair-sentence.ts';

/** What answers depend on besides the question. */
export interface KnownNow {
  readonly family: Family;
  readonly fits: KnownFits | null;
  readonly conditions: ConditionsState;
  readonly units: Units;
}

type Explaining = Pick<Doors, 'explainPlacement' | 'shapesUnder' | 'blockedWords' | 'partName'>;

let last: { readonly doors: Explaining; readonly known: KnownNow; readonly knowledge: Knowledge } | null = null;

/**
 * What a question line may know: the fits found so far, under the conditions in force, in the user's units. The same value
 * as long as nothing of it changes, whoever asks.
 */
export function knowledgeNow(doors: Explaining, known: KnownNow): Knowledge {
  if (last?.doors !== doors || !isSame(last.known, known))
    last = { doors, known, knowledge: knowledgeOf(doors, known) };
  return last.knowledge;
}

function isSame(a: KnownNow, b: KnownNow): boolean {
  return a.family === b.family && a.fits === b.fits && a.conditions === b.conditions && a.units === b.units;
}

function knowledgeOf(doors: Explaining, known: KnownNow): Knowledge {
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
