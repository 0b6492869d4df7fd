import type { Family } from '../../../family/family.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import type { Units } from '../../../family/length-text.ts';
import { NM_PER_INCH, NM_PER_MM } from '../../../geom/point.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { KeywayAnswer, UnknownSource } from './identify-state.ts';

/** An area: "0.42 mm²" or "0.00065 in²". An area above zero never reads as zero. */
export function areaText(squareNm: number, units: Units): string {
  const [per, decimals] = units === 'in' ? [NM_PER_INCH, 5] : [NM_PER_MM, 3];
  const value = squareNm / per / per;
  const least = 10 ** -decimals;
  return value > 0 && value < least / 2
    ? `under ${least.toFixed(decimals)} ${units}²`
    : `${value.toFixed(decimals)} ${units}²`;
}

/** Where an unknown outline comes from, in words. */
export const SOURCE_WORDS: Readonly<Record<UnknownSource, string>> = {
  family: 'of this family, compared with all others',
  file: 'from a file',
  traced: 'traced from a picture',
};

/**
 * What an unknown outline goes into: surely, perhaps, and not at all. A pair is too close to call where some outline within
 * the drawing error goes into some keyway within its tolerance, and another one does not.
 *
 * @param error in words, such as "0.050 mm".
 */
export function keywayWords(answers: readonly KeywayAnswer[], family: Family, error: string): string {
  const named = (wanted: KeywayAnswer['threeWay']) =>
    answers
      .filter(({ threeWay }) => threeWay === wanted)
      .map(({ openingId }) => family.profiles.find(({ id }) => id === openingId)?.name ?? openingId);
  const [sure, close, blocked] = [named('always'), named('depends'), named('never')];
  const others = sure.length + close.length > 0;
  return [
    sure.length > 0 ? `It goes into ${listed(sure)}, also if it is drawn ${error} wrong.` : '',
    close.length > 0 ? `Too close to call within the drawing error of ±${error}: ${listed(close)}.` : '',
    blocked.length > 0 ? `It is blocked in ${blockedWords(blocked, others)}.` : '',
  ]
    .filter(Boolean)
    .join(' ');
}

function blockedWords(blocked: readonly string[], others: boolean): string {
  if (blocked.length === 1) return blocked[0];
  return `${others ? 'the other' : 'all'} ${blocked.length} keyways`;
}

/** What a section of the family goes into as it stands there; empty where it is not judged, or is no blank or tool. */
export function entryWords(fits: KnownFits | null, { id, name }: Pick<Profile, 'id' | 'name'>, family: Family): string {
  const row = fits?.fits[fits.profiles.indexOf(id)];
  if (!fits || !row || row.length === 0 || row.some((fit) => !fit)) return '';
  const inside = fits.openings.filter((_, k) => row[k]?.verdict !== 'blocked');
  const names = inside.map(
    (openingId) => family.profiles.find((profile) => profile.id === openingId)?.name ?? openingId,
  );
  if (names.length === 0) return `${name} as the family has it goes into none of the keyways.`;
  const which = names.length > 4 ? `${names.length} of ${fits.openings.length} keyways` : listed(names);
  return `${name} as the family has it goes into ${which}.`;
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
