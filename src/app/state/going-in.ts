import { type Family, openingsOf } from '../../family/family.ts';
import type { Fit } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';

/** The keyways that a row of fits says the blank goes into, tight ones too, in chart order. */
export function goingIn(family: Family, row: ReadonlyMap<string, Fit>): { opening: Profile; fit: Fit }[] {
  return openingsOf(family).flatMap((opening) => {
    const fit = row.get(opening.id);
    return fit && fit.verdict !== 'blocked' ? [{ opening, fit }] : [];
  });
}
