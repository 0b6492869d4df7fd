import type { Profile } from '../profile/profile.ts';
import type { Answer } from './answer.ts';
import type { Knowledge } from './knowledge.ts';
import type { Reading } from './read-question.ts';
import { listed } from './say-list.ts';
import { caveatsOf, goesIn, sayPair } from './say-pair.ts';
import { sayWhere } from './say-where.ts';
import type { Meaning } from './take-meaning.ts';

/** Most pairs that are told one by one. */
const MOST_PAIRS = 12;

/**
 * Whether some blanks or tools go into some keyways: mostly one into one.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function answerPairs(
  entrants: readonly Meaning[],
  openings: readonly Meaning[],
  reading: Reading,
  knowledge: Knowledge,
): Answer {
  const meanings = [...entrants, ...openings];
  const corrections = correctionsOf(meanings);
  const [goers, keyways] = [profilesIn(entrants), profilesIn(openings)];
  const profiles = [...goers, ...keyways].map(({ id }) => id);
  const swap = reading.swapped ? ['A blank goes into a keyway, not the other way round; it is answered that way.'] : [];
  const pairs = goers.flatMap((entrant) => keyways.map((opening) => ({ entrant, opening })));
  if (pairs.length === 0) {
    const elsewhere = goers.flatMap((goer) => sayWhere(goer, knowledge));
    return { kind: 'answer', sentences: [...corrections, ...swap, ...elsewhere], profiles, choices: [] };
  }
  const told = pairs.slice(0, MOST_PAIRS);
  const sentences = [
    ...corrections,
    ...swap,
    ...(pairs.length > 1 ? summary(goers, keyways, knowledge, reading.yesOrNo) : []),
    ...told.map(({ entrant, opening }) => sayPair(entrant, opening, knowledge, reading.yesOrNo && pairs.length === 1)),
    ...(pairs.length > told.length ? [`So many pairs are not told one by one: see the chart.`] : []),
    ...unique(told.flatMap(({ entrant, opening }) => caveatsOf(entrant, opening, knowledge, reading.turning))),
    ...entrants.flatMap(sayAlike),
    ...unique(meanings.flatMap((meaning) => meaning.notes)),
  ];
  return { ...judged(pairs, knowledge), sentences, profiles, choices: [] };
}

/** What must be said first of all names, then what is answered instead. */
export function correctionsOf(meanings: readonly Meaning[]): string[] {
  const said = meanings.flatMap(({ corrections }) => corrections);
  return unique([...said, ...meanings.flatMap(({ instead }) => (instead === '' ? [] : [instead]))]);
}

/** Each profile of some meanings once. */
export function profilesIn(meanings: readonly Meaning[]): Profile[] {
  return unique(meanings.flatMap(({ profiles }) => profiles));
}

/** That the answer holds for other lengths too. */
export function sayAlike({ alike }: Meaning): string[] {
  if (alike.length === 0) return [];
  const differ = alike.length === 1 ? 'it differs' : 'they differ';
  return [`The same holds for ${listed(alike.map(({ name }) => name))}: ${differ} in length only.`];
}

/** Kind, verdict and pair of the answer. */
function judged(pairs: readonly { entrant: Profile; opening: Profile }[], knowledge: Knowledge) {
  const fits = pairs.map(({ entrant, opening }) => knowledge.fitOf(entrant.id, opening.id));
  if (fits.some((fit) => fit === undefined)) return { kind: 'not judged yet' } as const;
  if (pairs.length > 1) return { kind: 'answer' } as const;
  const [{ entrant, opening }] = pairs;
  return {
    kind: 'answer',
    pair: { entrantId: entrant.id, openingId: opening.id },
    ...(fits[0] && { verdict: fits[0].verdict }),
  } as const;
}

/** Several pairs in one sentence for each blank: "Reed group blank goes into A and B, but not into C." */
function summary(
  goers: readonly Profile[],
  keyways: readonly Profile[],
  knowledge: Knowledge,
  yesOrNo: boolean,
): string[] {
  if (keyways.length < 2) return [];
  return goers.flatMap((goer) => {
    const answers = keyways.map((keyway) => goesIn(knowledge, goer, keyway));
    if (answers.includes(undefined)) return [];
    const of = (answer: boolean) => keyways.filter((_, i) => answers[i] === answer).map(({ name }) => name);
    const [into, notInto] = [of(true), of(false)];
    if (notInto.length === 0)
      return [
        `${yesOrNo ? 'Yes: ' : ''}${goer.name} goes into ${into.length === 2 ? 'both' : 'all of'} ${listed(into)}.`,
      ];
    if (into.length === 0)
      return [
        `${yesOrNo ? 'No: ' : ''}${goer.name} goes into ${notInto.length === 2 ? `neither ${listed(notInto, 'nor')}` : `none of these: ${listed(notInto)}`}.`,
      ];
    return [
      `${yesOrNo ? 'Not into all: ' : ''}${goer.name} goes into ${listed(into)}, but not into ${listed(notInto, 'or')}.`,
    ];
  });
}

/** Each value once, in order. */
export function unique<Value>(values: readonly Value[]): Value[] {
  return [...new Set(values)];
}
