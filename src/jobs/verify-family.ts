import type { EntryMatrix } from '../family/entry-matrix.ts';
import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import { verifyFit } from '../fit/verify-fit.ts';
import { type Job, runInSlices } from './job.ts';

/** A pair whose fit the second, independent method does not confirm. */
export interface Disagreement {
  readonly profile: string;
  readonly opening: string;
  readonly reasons: readonly string[];
}

/** Re-checks every fit of a matrix by the second, independent method. */
export const verifyFamily: Job<{ family: Family; matrix: EntryMatrix }, Disagreement[]> = (
  { family, matrix },
  context,
) => runInSlices(verifyPairs(family, matrix), context);

function* verifyPairs(
  family: Family,
  { fits }: EntryMatrix,
): Generator<{ done: number; total: number }, Disagreement[], void> {
  const openings = openingsOf(family);
  const entrants = entrantsOf(family);
  const found: Disagreement[] = [];
  for (const [i, profile] of entrants.entries())
    for (const [k, opening] of openings.entries()) {
      const reasons = verifyFit(opening.ring, profile.ring, fits[i][k]);
      if (reasons.length > 0) found.push({ profile: profile.id, opening: opening.id, reasons });
      yield { done: i * openings.length + k + 1, total: entrants.length * openings.length };
    }
  return found;
}
