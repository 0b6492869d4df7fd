import type { EntryMatrix } from '../family/entry-matrix.ts';
import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import { FitCache, isMeasured } from '../family/fit-cache.ts';
import type { KnownFits } from '../family/known-fits.ts';
import { orRefuse } from '../family/pair-refused.ts';
import { plainConditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import { blankUnder, judgePair, openingUnder } from '../fit/judge-pair.ts';
import type { Opening } from '../fit/prepare-opening.ts';
import type { Profile } from '../profile/profile.ts';

/** Fits of earlier calls in this thread. */
const kept = new FitCache();

/**
 * The whole matrix of a family, new and upright, judging only those pairs which this thread has not judged before.
 *
 * @param known what is known of the family elsewhere, new and upright; taken as it is.
 * @yields how many pairs are done, of how many.
 * @throws PairRefused where a pair cannot be judged.
 * @check tests/unit/jobs/publish-sheets.test.ts
 */
export function* judgeKept(
  family: Family,
  known?: KnownFits,
): Generator<{ done: number; total: number }, EntryMatrix, void> {
  const openings = openingsOf(family);
  const entrants = entrantsOf(family);
  if (known) keepKnown(family, known);
  const judge = judging(family);
  const fits: Fit[][] = [];
  for (const entrant of entrants) {
    const row: Fit[] = [];
    for (const opening of openings) {
      row.push(judge(entrant, opening));
      yield { done: fits.length * openings.length + row.length, total: entrants.length * openings.length };
    }
    fits.push(row);
  }
  return { openings: openings.map(({ id }) => id), profiles: entrants.map(({ id }) => id), fits };
}

/** Keeps what is known elsewhere, by the outlines that it is about. */
function keepKnown({ profiles, runningClearance }: Family, known: KnownFits): void {
  const conditions = plainConditions(runningClearance);
  const rings = new Map(profiles.map(({ id, ring }) => [id, ring]));
  for (const [i, row] of known.fits.entries())
    for (const [k, fit] of row.entries()) {
      const [entrant, opening] = [rings.get(known.profiles[i]), rings.get(known.openings[k])];
      if (fit && isMeasured(fit) && entrant && opening) kept.set(opening, entrant, conditions, fit);
    }
}

function judging({ runningClearance }: Family): (entrant: Profile, opening: Profile) => Fit {
  const conditions = plainConditions(runningClearance);
  const shapes = new Map<Profile, Opening>();
  const shapeOf = (opening: Profile) => {
    const shape = shapes.get(opening) ?? openingUnder(opening.ring, conditions);
    shapes.set(opening, shape);
    return shape;
  };
  return (entrant, opening) => {
    const known = kept.get(opening.ring, entrant.ring, conditions);
    if (known && isMeasured(known)) return known;
    const fit = orRefuse(entrant.id, opening.id, () =>
      judgePair(shapeOf(opening), blankUnder(entrant.ring, conditions), conditions),
    );
    kept.set(opening.ring, entrant.ring, conditions, fit);
    return fit;
  };
}
