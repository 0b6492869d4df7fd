import type { Answer } from './answer.ts';
import { answerGoesIntoAll, answerWhatGoesIn, answerWhere } from './answer-entries.ts';
import { answerAlike, answerDifference, answerWhatIs } from './answer-names.ts';
import { answerPairs } from './answer-pair.ts';
import { answerTurned } from './answer-turned.ts';
import { EXAMPLE_FORMS } from './example-forms.ts';
import type { Knowledge } from './knowledge.ts';
import type { Mention } from './mention.ts';
import { misleadingNames } from './misleading.ts';
import type { MisleadingName } from './misleading-name.ts';
import { notUnderstood } from './not-understood.ts';
import { type Reading, readQuestion } from './read-question.ts';
import { chambersText, listed } from './say-list.ts';
import { withMeanings } from './take-meaning.ts';

/** Longest question that is read, in characters. */
export const LONGEST_QUESTION = 600;

/**
 * Answers a question about a family in plain words: does X go into Y, what is X, what goes into Y, where does X go, what
 * differs, what goes into all. Names are found in the question whatever else stands in it.
 *
 * @returns an answer for every text; one that is no question gets questions to choose from.
 * @check tests/unit/names/ask.test.ts holds the questions of first-time listeners, tests/cases/questions.ts
 */
export function ask(question: string, knowledge: Knowledge): Answer {
  if (question.length > LONGEST_QUESTION)
    return notUnderstood(['That is too long for one question. Ask one thing at a time.'], [], knowledge);
  const text = question.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ');
  const read = readQuestion(text, knowledge.register);
  const changed = read.turned.turns.has('changed') && isOfEntering(read);
  const denied = read.turned.turns.has('denied');
  const reading = changed || denied ? { ...read, yesOrNo: false } : read;
  const answer = answerTurned(text, reading, knowledge) ?? answerReading(text, reading, knowledge);
  if (answer.kind !== 'answer') return answer;
  return {
    ...answer,
    sentences: [
      ...(changed ? [AS_DRAWN] : []),
      ...(reading.bare ? [sayReadAs(reading)] : []),
      ...answer.sentences,
      ...(isOfEntering(reading) ? sayChambers(reading) : []),
      ...warningsFor(reading.mentions, knowledge),
      ...(reading.unread.length > 0 ? [`Not taken into account: ${quotedList(reading.unread)}.`] : []),
    ],
  };
}

function sayReadAs({ entrants, openings }: Reading): string {
  return `Read as: ${EXAMPLE_FORMS[0].question([...entrants, ...openings].map(({ text }) => text))}`;
}

/** Said where the question is about parts that are not as drawn. Common practice, no source. */
const AS_DRAWN =
  'This is answered for the parts as drawn: a blade that is filed, worn or forced may go in where the drawn one does not.';

function isOfEntering({ form }: Reading): boolean {
  return form === 'pair' || form === 'where' || form === 'what goes in' || form === 'goes into all';
}

/** That a length said of a lock is not judged. Common practice, no source. */
function sayChambers({ chambers, form }: Reading): string[] {
  if (chambers === null || form === 'what goes in') return [];
  return [
    `Length is no part of the section: whether a blank is long enough for ${chambersText(chambers)} is not judged.`,
  ];
}

function quotedList(texts: readonly string[]): string {
  return listed(texts.map((text) => `“${text}”`));
}

function answerReading(text: string, reading: Reading, knowledge: Knowledge): Answer {
  switch (reading.form) {
    case 'pair':
      return answerBoth(text, reading, knowledge);
    case 'where':
      return withMeanings(text, reading.entrants, 'entrant', knowledge, (meant) =>
        answerWhere(meant, reading, knowledge),
      );
    case 'what goes in':
      return withMeanings(text, reading.openings, 'opening', knowledge, (meant) =>
        answerWhatGoesIn(meant, reading, knowledge),
      );
    case 'goes into all':
      return answerGoesIntoAll(reading, knowledge);
    case 'what is':
      return answerWhatIs(text, reading.mentions, knowledge);
    case 'do they differ':
      return answerAlike(text, reading.mentions, knowledge);
    case 'what differs':
    case 'is it the same':
      if (reading.mentions.length > 2)
        return notUnderstood(['Ask about two names at a time. These can be asked:'], reading.mentions, knowledge);
      return answerDifference(text, reading.mentions, knowledge, reading.form === 'is it the same');
    case 'what is the word':
      return { kind: 'answer', sentences: [reading.meaning], profiles: [], choices: [] };
    default:
      return notUnderstood(['That was not understood. These can be asked:'], reading.mentions, knowledge);
  }
}

function answerBoth(question: string, reading: Reading, knowledge: Knowledge): Answer {
  const [entrants, openings] =
    reading.entrants.length > 0 ? [reading.entrants, reading.openings] : [[reading.mentions[0]], [reading.mentions[1]]];
  return withMeanings(question, entrants, 'entrant', knowledge, (goers) =>
    withMeanings(question, openings, 'opening', knowledge, (keyways) =>
      answerPairs(goers, keyways, reading, knowledge),
    ),
  );
}

/** That a name of the question misleads, and why. */
function warningsFor(mentions: readonly Mention[], knowledge: Knowledge): string[] {
  const named = new Set(
    mentions.flatMap(({ resolution }) =>
      resolution.kind === 'found' ? resolution.senses.map(({ text }) => text) : [],
    ),
  );
  const warned = [...named].some((text) =>
    knowledge.register.senses.some((s) => s.text === text && s.source === 'register'),
  );
  if (!warned) return [];
  return misleadingOnce(knowledge).flatMap(({ kind, texts, words }) => {
    const told = kind === 'joined' || kind === 'two schemes' || kind === 'foreign keyway';
    return told && texts.some((text) => named.has(text)) ? [`Beware: ${words}`] : [];
  });
}

const misleadingKnown = new WeakMap<Knowledge, readonly MisleadingName[]>();

function misleadingOnce(knowledge: Knowledge): readonly MisleadingName[] {
  const known = misleadingKnown.get(knowledge) ?? misleadingNames(knowledge);
  misleadingKnown.set(knowledge, known);
  return known;
}
