import type { Answer, Choice } from './answer.ts';
import { answerGoesIntoAll, answerWhatGoesIn, answerWhere } from './answer-entries.ts';
import { answerDifference, answerWhatIs } from './answer-names.ts';
import { answerPairs } from './answer-pair.ts';
import { EXAMPLE_FORMS } from './example-forms.ts';
import type { Knowledge } from './knowledge.ts';
import type { Mention } from './mention.ts';
import { misleadingNames } from './misleading.ts';
import type { MisleadingName } from './misleading-name.ts';
import { type Reading, readQuestion } from './read-question.ts';
import type { Role } from './resolve.ts';
import { type Meaning, takeMeaning } from './take-meaning.ts';

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
  const reading = readQuestion(text, knowledge.register);
  const answer = answerReading(text, reading, knowledge);
  const warnings = answer.kind === 'answer' ? warningsFor(reading.mentions, knowledge) : [];
  return warnings.length > 0 ? { ...answer, sentences: [...answer.sentences, ...warnings] } : answer;
}

function answerReading(text: string, reading: Reading, knowledge: Knowledge): Answer {
  switch (reading.form) {
    case 'pair':
      return answerBoth(text, reading, knowledge);
    case 'where':
      return withMeanings(text, reading.entrants, 'entrant', knowledge, (meant) => answerWhere(meant, knowledge));
    case 'what goes in':
      return withMeanings(text, reading.openings, 'opening', knowledge, (meant) =>
        answerWhatGoesIn(meant, reading, knowledge),
      );
    case 'goes into all':
      return answerGoesIntoAll(reading.asked, knowledge);
    case 'what is':
      return answerWhatIs(text, reading.mentions, knowledge);
    case 'what differs':
    case 'is it the same':
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

/** What is said of the meanings of some names; where one of them must be asked back, that. */
function withMeanings(
  question: string,
  mentions: readonly Mention[],
  role: Role,
  knowledge: Knowledge,
  say: (meanings: readonly Meaning[]) => Answer,
): Answer {
  const meanings: Meaning[] = [];
  for (const mention of mentions) {
    const taken = takeMeaning(question, mention, role, knowledge);
    if (!taken.ok) return taken.answer;
    meanings.push(taken.meaning);
  }
  return say(meanings);
}

/** Questions that can be asked, filled with the names that were found or those of the family. */
function notUnderstood(sentences: readonly string[], mentions: readonly Mention[], knowledge: Knowledge): Answer {
  return { kind: 'not understood', sentences, profiles: [], choices: exampleQuestions(mentions, knowledge) };
}

function exampleQuestions(mentions: readonly Mention[], { family }: Knowledge): Choice[] {
  const found = mentions.flatMap(({ text, resolution }) => (resolution.kind === 'found' ? [text] : []));
  const entrants = family.profiles.filter(({ kind }) => kind !== 'opening').map(({ name }) => name);
  const openings = family.profiles.filter(({ kind }) => kind === 'opening').map(({ name }) => name);
  return EXAMPLE_FORMS.flatMap(({ slots, question }) => {
    const [nextEntrant, nextOpening] = [[...entrants], [...openings]];
    const names = slots.map((slot, i) => found[i] ?? (slot === 'opening' ? nextOpening.shift() : nextEntrant.shift()));
    if (names.some((name) => name === undefined)) return [];
    const written = question(names.filter((name) => name !== undefined));
    return [{ label: written, question: written }];
  });
}
