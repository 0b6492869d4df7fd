import type { EntryMatrix } from '../../../../family/entry-matrix.ts';
import { entrantsOf, type Family, openingsOf } from '../../../../family/family.ts';
import type { GuardMargins } from '../../../../family/guard-margin.ts';
import type { KnownFits } from '../../../../family/known-fits.ts';
import type { Fit } from '../../../../fit/fit.ts';
import { AskedJob, makeAskedJobs } from '../../asked-job.ts';
import type { CountedSection } from './capacity-sections.ts';

/** The counted sections as a family of their own, judged. */
export interface CountedGuardInput {
  readonly family: Family;
  readonly matrix: EntryMatrix;
}

/**
 * The keyways and blanks of the counted sections, with how they are judged as drawn; null where a pair is not judged.
 *
 * @check tests/unit/app/capacity-guard.test.ts
 */
export function countedGuardInput(
  family: Family,
  counted: readonly CountedSection[],
  known: KnownFits,
): CountedGuardInput | null {
  const wanted = new Set(counted.flatMap(({ keyway, blank }) => [keyway.id, blank.id]));
  const own = { ...family, profiles: family.profiles.filter(({ id }) => wanted.has(id)) };
  const [profiles, openings] = [entrantsOf(own), openingsOf(own)].map((list) => list.map(({ id }) => id));
  const fits = profiles.map((id) =>
    openings.map((opening) => known.fits[known.profiles.indexOf(id)]?.[known.openings.indexOf(opening)]),
  );
  if (!isWhole(fits)) return null;
  return { family: own, matrix: { profiles, openings, fits } };
}

function isWhole(fits: readonly (readonly (Fit | undefined)[])[]): fits is readonly (readonly Fit[])[] {
  return fits.every((row) => row.every((fit) => fit !== undefined));
}

/** Outlines are values: an unchanged one is the same object. */
function isSame(a: CountedGuardInput, b: CountedGuardInput): boolean {
  const [one, two] = [a.family, b.family];
  return (
    one.runningClearance === two.runningClearance &&
    one.profiles.length === two.profiles.length &&
    one.profiles.every(({ id, ring }, i) => id === two.profiles[i].id && ring === two.profiles[i].ring)
  );
}

/** The search for the guard margin of counted sections, for a window. */
export const countedGuardOf = makeAskedJobs<CountedGuardInput, GuardMargins>(
  ({ doors }) => new AskedJob(({ family, matrix }) => doors.guardFamily(family, matrix), isSame),
);
