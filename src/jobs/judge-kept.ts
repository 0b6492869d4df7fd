import { type EntryMatrix, entryMatrix, type MeasuredPairs } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import { FitCache } from '../family/fit-cache.ts';
import type { KnownFits } from '../family/known-fits.ts';
import { plainConditions } from '../fit/conditions.ts';

/** Fits of earlier calls in this thread. */
const kept = new FitCache();

/**
 * The whole matrix of a family, new and upright, judging only those pairs which this thread has not judged before.
 *
 * @param known what is known of the family elsewhere, new and upright; taken as it is.
 * @param isToMeasure of which blocked pairs the interference is found; of all where not given.
 * @yields how many pairs are done, of how many.
 * @throws PairRefused where a pair cannot be judged.
 * @check tests/unit/jobs/publish-sheets.test.ts
 */
export function* judgeKept(
  family: Family,
  known?: KnownFits,
  isToMeasure?: MeasuredPairs,
): Generator<{ done: number; total: number }, EntryMatrix, void> {
  if (known) keepKnown(family, known);
  return yield* entryMatrix(family, plainConditions(family.runningClearance), kept, isToMeasure);
}

/** Keeps what is known elsewhere, by the outlines that it is about. */
function keepKnown({ profiles, runningClearance }: Family, known: KnownFits): void {
  const conditions = plainConditions(runningClearance);
  const rings = new Map(profiles.map(({ id, ring }) => [id, ring]));
  for (const [i, row] of known.fits.entries())
    for (const [k, fit] of row.entries()) {
      const [entrant, opening] = [rings.get(known.profiles[i]), rings.get(known.openings[k])];
      if (fit && entrant && opening) kept.set(opening, entrant, conditions, fit);
    }
}
