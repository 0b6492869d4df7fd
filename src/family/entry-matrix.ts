import { type Conditions, plainConditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import { blankUnder, judgePair, judgePairEntry, openingUnder } from '../fit/judge-pair.ts';
import type { Opening } from '../fit/prepare-opening.ts';
import { entrantsOf, type Family, openingsOf } from './family.ts';
import { type FitCache, isMeasured } from './fit-cache.ts';
import { orRefuse } from './pair-refused.ts';

/** Every blank and tool judged in every opening, in chart order. */
export interface EntryMatrix {
  /** Ids of the openings: the columns. */
  readonly openings: readonly string[];
  /** Ids of the blanks and tools: the rows. */
  readonly profiles: readonly string[];
  /** `fits[profile][opening]`. */
  readonly fits: readonly (readonly Fit[])[];
}

/** Whether the margin of a pair is wanted where it is blocked. */
export type MeasuredPairs = (entrantId: string, openingId: string) => boolean;

/**
 * Judges a family pair by pair; the caller decides between pairs whether to go on.
 *
 * @param conditions new parts held upright where not given.
 * @param kept fits that are known: pairs measured there are not judged again, and those that are judged are kept there.
 * @param isToMeasure of which blocked pairs, by their ids, the interference is found, which costs most of the time; of all
 * where not given.
 * @yields how many pairs are done, of how many.
 * @returns the whole matrix.
 * @throws PairRefused where a pair cannot be judged.
 */
export function* entryMatrix(
  family: Family,
  conditions: Conditions = plainConditions(family.runningClearance),
  kept?: FitCache,
  isToMeasure: MeasuredPairs = () => true,
): Generator<{ done: number; total: number }, EntryMatrix, void> {
  const openings = openingsOf(family);
  const entrants = entrantsOf(family);
  const shapes: Opening[] = [];
  const fits: Fit[][] = [];
  for (const profile of entrants) {
    const blank = blankUnder(profile.ring, conditions);
    const row: Fit[] = [];
    for (const [k, { id, ring }] of openings.entries()) {
      const known = kept?.get(ring, profile.ring, conditions);
      const toMeasure = isToMeasure(profile.id, id);
      if (known && (!toMeasure || isMeasured(known))) row.push(known);
      else {
        shapes[k] ??= openingUnder(ring, conditions);
        const judge = toMeasure ? judgePair : judgePairEntry;
        const fit = orRefuse(profile.id, id, () => judge(shapes[k], blank, conditions));
        kept?.set(ring, profile.ring, conditions, fit);
        row.push(fit);
      }
      yield { done: fits.length * openings.length + row.length, total: entrants.length * openings.length };
    }
    fits.push(row);
  }
  return { openings: openings.map(({ id }) => id), profiles: entrants.map(({ id }) => id), fits };
}
