import type { Fit } from '../fit/fit.ts';
import { placeBlank } from '../fit/place-blank.ts';
import { boxOf } from '../geom/point.ts';
import type { Profile } from '../profile/profile.ts';
import type { EntryMatrix } from './entry-matrix.ts';
import { entrantsOf, type Family } from './family.ts';

/** The blank that belongs to an opening: the first one of the same section that goes in; null where there is none. */
export function ownBlankOf(family: Family, opening: Profile, matrix: EntryMatrix): Profile | null {
  const k = matrix.openings.indexOf(opening.id);
  if (opening.section === undefined || k < 0) return null;
  const own = entrantsOf(family).find(
    ({ id, kind, section }) =>
      kind === 'blank' &&
      section === opening.section &&
      matrix.fits[matrix.profiles.indexOf(id)]?.[k]?.verdict !== 'blocked',
  );
  return own ?? null;
}

/** Height of the lowest point of a seated blank above the origin of the opening, nanometres: springs press it down to there. */
function seatOf(profile: Profile, fit: Fit): number {
  return boxOf(placeBlank(profile.ring, fit.seated)).minY;
}

/**
 * How much higher (positive) or lower a blank rides in an opening than the section's own blank when both are seated,
 * nanometres: every cut stands off by as much. Null where either does not go in, or there is no own blank.
 */
export function seatOffset(family: Family, matrix: EntryMatrix, profile: Profile, opening: Profile): number | null {
  const own = ownBlankOf(family, opening, matrix);
  const fitOf = ({ id }: Profile) => matrix.fits[matrix.profiles.indexOf(id)]?.[matrix.openings.indexOf(opening.id)];
  const fit = fitOf(profile);
  const ownFit = own && fitOf(own);
  if (!own || !fit || !ownFit || fit.verdict === 'blocked') return null;
  return seatOf(profile, fit) - seatOf(own, ownFit);
}
