import type { EntryMatrix } from '../family/entry-matrix.ts';
import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import { type Conditions, plainConditions } from '../fit/conditions.ts';
import { blankUnder, openingUnder } from '../fit/judge-pair.ts';
import { verifyFit } from '../fit/verify-fit.ts';
import { type Job, runInSlices } from './job.ts';

/** A pair whose fit the second, independent method does not confirm. */
export interface Disagreement {
  readonly profile: string;
  readonly opening: string;
  readonly reasons: readonly string[];
}

/** Re-checks every fit of a matrix by the second, independent method, under the conditions it was judged under. */
export const verifyFamily: Job<{ family: Family; matrix: EntryMatrix; conditions?: Conditions }, Disagreement[]> = (
  { family, matrix, conditions },
  context,
) => runInSlices(verifyPairs(family, matrix, conditions ?? plainConditions(family.runningClearance)), context);

function* verifyPairs(
  family: Family,
  { fits }: EntryMatrix,
  conditions: Conditions,
): Generator<{ done: number; total: number }, Disagreement[], void> {
  const openings = openingsOf(family).map(({ id, ring }) => ({ id, region: openingUnder(ring, conditions).region }));
  const entrants = entrantsOf(family);
  const found: Disagreement[] = [];
  for (const [i, profile] of entrants.entries()) {
    const blank = blankUnder(profile.ring, conditions);
    for (const [k, { id, region }] of openings.entries()) {
      const reasons = verifyFit(region, blank, fits[i][k]);
      if (reasons.length > 0) found.push({ profile: profile.id, opening: id, reasons });
      yield { done: i * openings.length + k + 1, total: entrants.length * openings.length };
    }
  }
  return found;
}
