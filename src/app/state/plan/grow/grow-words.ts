import type { Family } from '../../../../family/family.ts';
import { alikeWords } from '../../../../family/guard-margin.ts';
import { readingText, type Units, wearLengthText } from '../../../../family/length-text.ts';
import { NM_PER_INCH, NM_PER_MM } from '../../../../geom/point.ts';
import type { GrowCount, GrowPair, GrowPlace, GrowProposal, GrowReport, NoRoom } from '../../../../plan/grow.ts';

const ELSEWHERE = 'Wards of other shapes or at other places are not looked at.';

const sections = (n: number) => `${n} ${n === 1 ? 'section' : 'sections'}`;

/** "Room for 65 sections more", or that there is none. */
export function countHeadline({ confirmed, atMost }: GrowCount): string {
  if (confirmed === 0 && atMost === 0) return 'No room for another section at these places';
  if (confirmed === atMost) return `Room for ${sections(confirmed)} more`;
  return `Room for at least ${sections(confirmed)} more`;
}

/** How sure the number is, and over what: wards of other shapes and at other places are never looked at. */
export function sureWords({ count, places }: GrowReport): string {
  const over = `over ${places.length === 1 ? 'this one place' : `these ${places.length} places`} for wards`;
  if (count.confirmed === count.atMost)
    return count.atMost === 0
      ? `Proved ${over}: every ward there that could part a new section from the others is in use. ${ELSEWHERE}`
      : `Proved the most ${over}, each drawn and judged beside all others. ${ELSEWHERE}`;
  return `So many were drawn and judged beside each other; more than ${count.atMost} cannot be ${over}. ${ELSEWHERE}`;
}

/** What enters them, how many there are to choose from, and how many of those are told. @check tests/unit/app/grow-words.test.ts */
export function enteredWords(
  { tops, newTop, count, proposals }: Pick<GrowReport, 'tops' | 'newTop' | 'count' | 'proposals'>,
  nameOf: (id: string) => string,
): string {
  const by = newTop ? 'the widest blank that passes all keyways' : tops.map(nameOf).join(' and ');
  return `Nothing that exists is changed, and each is entered by ${by}.${choiceWords(count.single, proposals.length)}`;
}

function choiceWords(single: number, told: number): string {
  if (single === 0) return '';
  if (single === 1) return ' One could come next.';
  const some = told > 0 && told < single ? `; ${told} of them ${told === 1 ? 'is' : 'are'} proposed here` : '';
  return ` ${single} different ones could come next${some}.`;
}

/** Why nothing can be said, and what to do. */
export function noRoomWords(none: NoRoom): { readonly title: string; readonly what: string } {
  switch (none.why) {
    case 'no-keyways':
      return {
        title: 'This family has no keyways',
        what: 'Make keyways in Draw, import them, or plan them from areas.',
      };
    case 'one-keyway':
      return {
        title: 'This family has one keyway',
        what: 'With a second one it can be said which wards they leave free. Make another keyway in Draw.',
      };
    case 'no-all-section':
      return {
        title: 'No blank enters every keyway',
        what: none.passage
          ? 'Room to grow is what an all-section blank leaves free. The widest blank that passes all keyways can stand for it: it is then added together with the first new section.'
          : 'Room to grow is what an all-section blank leaves free, and these keyways share no passage that a blank could have.',
      };
    case 'no-sites':
      return {
        title: 'No place for another ward',
        what: 'The all-section blank has no groove in which a ward would stop a blank, whatever parts within their tolerance are taken.',
      };
  }
}

/** "left 3.30–3.90 mm": a place of a ward, in steps smaller than the gap of a blank. */
export function placeText({ side, from, to }: GrowPlace, units: Units): string {
  const [per, decimals] = units === 'in' ? [NM_PER_INCH, 4] : [NM_PER_MM, 2];
  return `${side} ${(from / per).toFixed(decimals)}–${(to / per).toFixed(decimals)} ${units}`;
}

/** The wards of a proposal, in words. */
export function wardsText({ code }: Pick<GrowProposal, 'code'>, places: readonly GrowPlace[], units: Units): string {
  const wards = places.filter((_, site) => code[site] > 0).map((place) => placeText(place, units));
  return wards.length === 0 ? 'no ward' : wards.join(', ');
}

/** How a proposal lies between its neighbours. */
export function betweenText(
  { between, code }: Pick<GrowProposal, 'between' | 'code'>,
  first: string,
  second: string,
): string {
  if (!between) return '';
  const wards = (n: number, of: string) => `${n} ${n === 1 ? 'ward' : 'wards'} of ${of}`;
  const own = between.neither > 0 ? `, ${between.neither} of neither` : '';
  const both = code.filter((level) => level > 0).length - between.first - between.second - between.neither;
  const common = both > 0 ? `, ${both} where both have one` : '';
  return `${wards(between.first, first)}, ${between.second} of ${second}${common}${own}.`;
}

/** What sets the guard margin of a proposal: "Smew blank into the new keyway", and how many others come as close. */
export function guardText({ guard }: Pick<GrowProposal, 'guard'>, nameOf: (id: string) => string): string {
  if (!guard) return '';
  const { blank, keyway } = guard;
  return `${blank === null ? 'Its own blank' : nameOf(blank)} into ${keyway === null ? 'the new keyway' : nameOf(keyway)}${alikeWords(guard)}`;
}

/** A guard margin as a reading. */
export function guardLength(guard: GrowPair | null, units: Units): string {
  return guard ? wearLengthText(guard.length, units) : 'nothing near';
}

/** A clearance as a reading. */
export function clearanceLength({ length }: GrowPair, units: Units): string {
  return readingText(length, units);
}

/**
 * What would give room where none is left: a thinner all-section blank, and who must get it; empty where there is room.
 *
 * @check tests/unit/app/grow-words.test.ts
 */
export function reissueWords({ none, count, tops, newTop }: GrowReport, nameOf: (id: string) => string): string {
  const full = none === null ? count.atMost === 0 : none.why === 'no-sites';
  if (!full) return '';
  const place =
    'Where its grooves have no room left, a ward at a new place needs a groove there in the all-section blank';
  if (newTop) return `${place}, which would have to be thinner than the widest one that passes all keyways.`;
  const which = tops.map(nameOf).join(' and ');
  return `${place}: a thinner one (Tiers, Common passage, shows how thin it may get; Strength what it then bears) in place of ${which}, which everyone who carries it would have to change. Cylinders and all other blanks stay as they are.`;
}

/** Names by id. */
export function namesOf(family: Family): (id: string) => string {
  const names = new Map(family.profiles.map(({ id, name }) => [id, name]));
  return (id) => names.get(id) ?? id;
}

/** Whether the reserve of a plan is kept; empty where the plan has none. */
export function reserveWords({ plan }: Family, { confirmed }: GrowCount): string {
  if (!plan || plan.reserve === 0) return '';
  const kept = confirmed >= plan.reserve;
  return `The plan keeps room for ${sections(plan.reserve)} more: ${kept ? `there is room for ${plan.reserve === 1 ? 'it' : 'them'}` : `there is room for ${confirmed} only`}.`;
}
