import { isMeasured } from '../../../family/fit-cache.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import type { Conditions } from '../../../fit/conditions.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { Doors } from '../doors.ts';

/**
 * What of the plug blocks a blank: "left ward", with the right article left to the sentence; empty while the pair is
 * not measured, since only a measured pair lies in its best placement.
 */
export function blockingPart(
  doors: Pick<Doors, 'explainPlacement' | 'shapesUnder' | 'partName'>,
  entrant: Profile,
  opening: Profile,
  fit: Fit | undefined,
  conditions: Conditions,
): string {
  if (fit?.verdict !== 'blocked' || !isMeasured(fit)) return '';
  const worn = conditions.wear > 0 ? doors.shapesUnder(opening.ring, entrant.ring, conditions) : null;
  const { collisions } = worn
    ? doors.explainPlacement(worn.opening, worn.entrant, fit.placement)
    : doors.explainPlacement(opening.ring, entrant.ring, fit.placement);
  return collisions.length > 0 ? doors.partName(collisions[0]) : '';
}

/** The fit of a pair by ids; undefined where it is not judged. */
export function fitOf(fits: KnownFits | null, entrantId: string, openingId: string): Fit | undefined {
  if (!fits) return undefined;
  return fits.fits[fits.profiles.indexOf(entrantId)]?.[fits.openings.indexOf(openingId)];
}
