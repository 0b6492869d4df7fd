import type { Family } from '../../../family/family.ts';
import { NM_PER_INCH, NM_PER_MM } from '../../../geom/point.ts';
import type { Identification } from '../../../identify/identify.ts';
import type { Units } from '../length-text.ts';
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

/** What stands beside a candidate in the list; empty for those that are out of the question. */
export function candidateWords({ likeness, count }: Identification, index: number): string {
  if (likeness === 'none') return index === 0 ? 'nearest, but not alike' : '';
  if (index >= count) return '';
  if (likeness === 'certain') return 'almost certainly';
  return likeness === 'probable' ? 'probably' : 'could be it';
}

/** Where an unknown outline comes from, in words. */
export const SOURCE_WORDS: Readonly<Record<UnknownSource, string>> = {
  family: 'of this family, compared with all others',
  file: 'from a file',
  traced: 'traced from a picture',
};

/**
 * What an unknown outline would enter: as it is drawn, and what the drawing error and the tolerance of the keyways leave
 * of that.
 */
export function keywayWords(answers: readonly KeywayAnswer[], family: Family): string {
  const named = (wanted: (answer: KeywayAnswer) => boolean) =>
    answers
      .filter(wanted)
      .map(({ openingId }) => family.profiles.find(({ id }) => id === openingId)?.name ?? openingId);
  const goesIn = named(({ fit }) => fit.verdict !== 'blocked');
  const sure = named(({ threeWay }) => threeWay === 'always');
  const maybe = named(({ fit, threeWay }) => fit.verdict === 'blocked' && threeWay === 'depends');
  return [
    goesIn.length > 0 ? `As drawn it would enter ${listed(goesIn)}.` : 'As drawn it would enter none of the keyways.',
    goesIn.length > 0 ? sureWords(goesIn, sure) : '',
    maybe.length > 0 ? `It might enter ${listed(maybe)}, if it was drawn too large.` : '',
  ]
    .filter(Boolean)
    .join(' ');
}

function sureWords(goesIn: readonly string[], sure: readonly string[]): string {
  if (sure.length === goesIn.length) return 'The drawing error does not change that.';
  if (sure.length > 0) return `Whatever the drawing error, it would enter ${listed(sure)}.`;
  return 'The drawing error is larger than the gaps: if it was drawn too small it would not.';
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
