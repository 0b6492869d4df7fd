import type { Fit } from '../fit/fit.ts';
import { judgeFit } from '../fit/judge-fit.ts';
import { prepareBlank } from '../fit/prepare-blank.ts';
import { prepareOpening } from '../fit/prepare-opening.ts';
import { entrantsOf, type Family, openingsOf } from './family.ts';

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
 * @yields how many pairs are done, of how many.
 * @returns the whole matrix.
 */
export function* entryMatrix(family: Family): Generator<{ done: number; total: number }, EntryMatrix, void> {
  const openings = openingsOf(family).map((profile) => ({ id: profile.id, shape: prepareOpening(profile.ring) }));
  const entrants = entrantsOf(family);
  const fits: Fit[][] = [];
  for (const profile of entrants) {
    const blank = prepareBlank(profile.ring);
    const row: Fit[] = [];
    for (const { shape } of openings) {
      row.push(judgeFit(shape, blank, family.runningClearance));
      yield { done: fits.length * openings.length + row.length, total: entrants.length * openings.length };
    }
    fits.push(row);
  }
  return { openings: openings.map(({ id }) => id), profiles: entrants.map(({ id }) => id), fits };
}
