import { isMeasured } from '../../family/fit-cache.ts';
import type { Conditions } from '../../fit/conditions.ts';
import type { Fit } from '../../fit/fit.ts';
import type { FormatBand, FormatLength } from '../../fit/fit-sentence.ts';
import type { Profile } from '../../profile/profile.ts';
import type { Doors } from './doors.ts';
import { bandText, gapText, type Units } from './length-text.ts';

/** What a sentence about a judged pair is made of. */
export interface SaidPair {
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly fit: Fit;
  readonly conditions: Conditions;
}

/** The sentence about a pair at its best placement, as a class would want it said. */
export function pairSentence(
  doors: Pick<Doors, 'explainPlacement' | 'fitSentence' | 'shapesUnder'>,
  { entrant, opening, fit, conditions }: SaidPair,
  units: Units,
): string {
  if (!isMeasured(fit))
    return `${entrant.name} does not enter ${opening.name}; how much too deep it is, is still being measured.`;
  const worn = conditions.wear > 0 ? doors.shapesUnder(opening.ring, entrant.ring, conditions) : null;
  const explanation = worn
    ? doors.explainPlacement(worn.opening, worn.entrant, fit.placement)
    : doors.explainPlacement(opening.ring, entrant.ring, fit.placement);
  return doors.fitSentence(entrant.name, opening.name, fit, explanation, lengthWriter(units), bandWriter(units));
}

/** Writes gaps and depths in `units`. */
export function lengthWriter(units: Units): FormatLength {
  return (nm) => gapText(nm, units);
}

/** Writes height bands in `units`. */
export function bandWriter(units: Units): FormatBand {
  return (from, to) => bandText(from, to, units);
}
