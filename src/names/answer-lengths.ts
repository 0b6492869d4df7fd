import type { Profile } from '../profile/profile.ts';
import type { Answer } from './answer.ts';
import { unique } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import type { Mention } from './mention.ts';
import { notUnderstood } from './not-understood.ts';
import type { Reading } from './read-question.ts';
import { profilesOf, sameSection } from './resolve.ts';
import { chambersText, listed } from './say-list.ts';
import { askBack } from './take-meaning.ts';

/** A blank under the name that it was asked by. */
interface Named {
  readonly name: string;
  readonly blank: Profile;
  readonly chambers: number;
}

/**
 * Blanks by their lengths in chambers: which of some is the longest, or whether they are of one length.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function answerLengths(question: string, reading: Reading, knowledge: Knowledge): Answer | null {
  const { mentions, form, turned } = reading;
  if (form === 'pair' && !turned.turns.has('comparison') && !turned.outline.includes('same')) return null;
  const stuck = mentions.find(({ resolution }) => resolution.kind !== 'found');
  if (stuck) return askBack(question, stuck, knowledge.register);
  const named = blanksNamed(mentions, knowledge);
  if (named.length === 0 || mentions.some(({ kind }) => kind === 'keyway'))
    return notUnderstood(['Lengths are known of blanks only, in chambers. These can be asked:'], mentions, knowledge);
  const sentences = [
    ...sayLengths(named, /short/.test(turned.outline), /\b(same|equal)/.test(turned.outline)),
    'Length is no part of the section.',
  ];
  const profiles = unique(named.map(({ blank }) => blank.id));
  return { kind: 'answer', sentences, profiles, choices: [] };
}

/** The blanks of some names; of one name alone, or of none, those that it can be compared with. */
function blanksNamed(mentions: readonly Mention[], { family }: Knowledge): Named[] {
  const senses = mentions.flatMap(({ resolution }) => (resolution.kind === 'found' ? [resolution.senses[0]] : []));
  const pool = (sense: (typeof senses)[number]) =>
    senses.length === 1 ? sameSection(family, sense, 'entrant') : profilesOf(family, sense, 'entrant');
  const named = senses.flatMap((sense) => {
    const blanks = pool(sense);
    return blanks.map((blank) => ({ blank, name: blanks.length > 1 ? blank.name : sense.text }));
  });
  const all = senses.length > 0 ? named : family.profiles.map((blank) => ({ blank, name: blank.name }));
  return all.flatMap(({ blank, name }) =>
    blank.kind === 'blank' && blank.chambers !== undefined ? [{ blank, name, chambers: blank.chambers }] : [],
  );
}

function sayLengths(named: readonly Named[], shortest: boolean, same: boolean): string[] {
  const lengths = unique(named.map(({ chambers }) => chambers));
  const most = shortest ? Math.min(...lengths) : Math.max(...lengths);
  const of = (ones: readonly Named[]) => listed(ones.map(({ name }) => name));
  const [first, others] = [named.filter((one) => one.chambers === most), named.filter((one) => one.chambers !== most)];
  if (others.length === 0) {
    if (named.length === 1) return [`${of(named)} is for ${chambersText(most)}.`];
    return [`${same ? 'Yes: ' : ''}${of(named)} are of one length, for ${chambersText(most)}.`];
  }
  const is = first.length > 1 ? 'are' : 'is';
  const start = same ? 'No: ' : '';
  return [
    `${start}${of(first)} ${is} the ${shortest ? 'shortest' : 'longest'}, for ${chambersText(most)}.`,
    ...lengths
      .filter((length) => length !== most)
      .map((length) => {
        const ones = others.filter(({ chambers }) => chambers === length);
        return `${of(ones)} ${ones.length > 1 ? 'are' : 'is'} for ${chambersText(length)}.`;
      }),
  ];
}
