import type { Fit, Placement } from '../../fit/fit.ts';
import type { FormatBand, FormatLength } from '../../fit/fit-sentence.ts';
import type { Profile } from '../../profile/profile.ts';
import type { Doors } from './doors.ts';
import { bandText, gapText, type Units } from './length-text.ts';

/** The sentence about a pair at its best placement, as a class would want it said. */
export function pairSentence(
  doors: Pick<Doors, 'explainPlacement' | 'fitSentence'>,
  entrant: Profile,
  opening: Profile,
  fit: Fit,
  units: Units,
): string {
  const explanation = doors.explainPlacement(opening.ring, entrant.ring, fit.placement);
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

/** The least gap of `entrant` in `opening` at any placement, negative when it collides, nanometres. */
export function gapMeter(doors: Pick<Doors, 'explainPlacement'>, entrant: Profile, opening: Profile) {
  return (placement: Placement): number => doors.explainPlacement(opening.ring, entrant.ring, placement).gap;
}
