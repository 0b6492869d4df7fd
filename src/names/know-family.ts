import type { Family } from '../family/family.ts';
import { isMeasured } from '../family/fit-cache.ts';
import { explainPlacement } from '../fit/explain-placement.ts';
import type { Fit } from '../fit/fit.ts';
import { blockedWords, type FormatBand, type FormatLength, partName } from '../fit/fit-sentence.ts';
import type { Knowledge } from './knowledge.ts';
import { registerOf } from './register.ts';

/**
 * What is known of a family whose parts are new: the register, the fits handed in, and reasons worked out from the
 * outlines when they are asked for.
 *
 * @param fitOf the fit of a blank or tool in a keyway by their ids; undefined where it is not judged yet.
 * @param length how lengths are written.
 * @param band how height bands are written.
 * @check tests/unit/names/ask.test.ts
 */
export function knowFamily(
  family: Family,
  fitOf: (entrantId: string, openingId: string) => Fit | undefined,
  length: FormatLength,
  band: FormatBand,
): Knowledge {
  const byId = new Map(family.profiles.map((profile) => [profile.id, profile]));
  const reason = (entrantId: string, openingId: string) => {
    const [entrant, opening, fit] = [byId.get(entrantId), byId.get(openingId), fitOf(entrantId, openingId)];
    if (!entrant || !opening || !fit || !isMeasured(fit)) return '';
    const { collisions, contacts } = explainPlacement(opening.ring, entrant.ring, fit.placement);
    if (fit.verdict === 'blocked') return collisions.length > 0 ? blockedWords(collisions, length, band) : '';
    return contacts.length > 0 && fit.clearance > 0 ? `the narrowest gap at the ${partName(contacts[0])}` : '';
  };
  return { family, register: registerOf(family), fitOf, reason, length };
}
