import { type Conditions, plainConditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import { blankUnder, judgePair, openingUnder } from '../fit/judge-pair.ts';
import { entrantsOf, type Family, openingsOf } from './family.ts';
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

/**
 * Judges a family pair by pair; the caller decides between pairs whether to go on.
 *
 * @param conditions new parts held upright where not given.
 * @yields how many pairs are done, of how many.
 * @returns the whole matrix.
 * @throws PairRefused where a pair cannot be judged.
 */
export function* entryMatrix(
  family: Family,
  conditions: Conditions = plainConditions(family.runningClearance),
): Generator<{ done: number; total: number }, EntryMatrix, void> {
  const openings = openingsOf(family).map(({ id, ring }) => ({ id, shape: openingUnder(ring, conditions) }));
  const entrants = entrantsOf(family);
  const fits: Fit[][] = [];
  for (const profile of entrants) {
    const blank = blankUnder(profile.ring, conditions);
    const row: Fit[] = [];
    for (const { id, shape } of openings) {
      row.push(orRefuse(profile.id, id, () => judgePair(shape, blank, conditions)));
      yield { done: fits.length * openings.length + row.length, total: entrants.length * openings.length };
    }
    fits.push(row);
  }
  return { openings: openings.map(({ id }) => id), profiles: entrants.map(({ id }) => id), fits };
}
