import { isMeasured } from '../../family/fit-cache.ts';
import { bandText, gapText, readingText, type Units } from '../../family/length-text.ts';
import type { Conditions } from '../../fit/conditions.ts';
import type { Fit } from '../../fit/fit.ts';
import type { FormatBand, FormatLength } from '../../fit/fit-sentence.ts';
import type { Profile } from '../../profile/profile.ts';
import type { Doors } from './doors.ts';

/** What a sentence about a judged pair is made of. */
export interface SaidPair {
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly fit: Fit;
  readonly conditions: Conditions;
}

/**
 * The sentence about a pair at its best placement, as the readings have it.
 *
 * @param halted whether a figure that is not there stays away, since the judging was stopped.
 */
export function pairSentence(
  doors: Pick<Doors, 'explainPlacement' | 'fitSentence' | 'shapesUnder'>,
  { entrant, opening, fit, conditions }: SaidPair,
  units: Units,
  halted = false,
): string {
  if (!isMeasured(fit)) {
    const depth = halted ? 'was not measured' : 'is still being measured';
    return `${entrant.name} does not enter ${opening.name}; its depth ${depth}.`;
  }
  const worn = conditions.wear > 0 ? doors.shapesUnder(opening.ring, entrant.ring, conditions) : null;
  const explanation = worn
    ? doors.explainPlacement(worn.opening, worn.entrant, fit.placement)
    : doors.explainPlacement(opening.ring, entrant.ring, fit.placement);
  const length = (nm: number) => readingText(nm, units);
  return doors.fitSentence(entrant.name, opening.name, fit, explanation, length, bandWriter(units));
}

/** Writes gaps and depths in `units`, as over a drawing. */
export function lengthWriter(units: Units): FormatLength {
  return (nm) => gapText(nm, units);
}

/** Writes height bands in `units`. */
export function bandWriter(units: Units): FormatBand {
  return (from, to) => bandText(from, to, units);
}
