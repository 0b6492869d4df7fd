import type { Answer } from './answer.ts';
import { correctionsOf, profilesIn, unique } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import type { Mention } from './mention.ts';
import { notUnderstood } from './not-understood.ts';
import type { Reading } from './read-question.ts';
import { goesIn, sayPair } from './say-pair.ts';
import { type Meaning, withMeanings } from './take-meaning.ts';

/** Whether the blank of each of two names goes into the keyway of the other. */
interface Crossing {
  readonly goers: readonly Meaning[];
  readonly keyways: readonly Meaning[];
}

/**
 * Whether two names keep each other out, or go into each other: the blank of each in the keyway of the other.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function answerEachOther(question: string, { mentions }: Reading, knowledge: Knowledge): Answer {
  const [one, two] = mentions;
  if (mentions.length !== 2)
    return notUnderstood(['Ask about two names at a time. These can be asked:'], mentions, knowledge);
  return crossing(question, one, two, knowledge, (there) =>
    crossing(question, two, one, knowledge, (back) => told(mentions, [there, back], knowledge)),
  );
}

function crossing(
  question: string,
  goer: Mention,
  keyway: Mention,
  knowledge: Knowledge,
  say: (crossing: Crossing) => Answer,
): Answer {
  return withMeanings(question, [goer], 'entrant', knowledge, (goers) =>
    withMeanings(question, [keyway], 'opening', knowledge, (keyways) => say({ goers, keyways })),
  );
}

function told(mentions: readonly Mention[], crossings: readonly Crossing[], knowledge: Knowledge): Answer {
  const pairs = crossings.flatMap(({ goers, keyways }) =>
    profilesIn(goers).flatMap((goer) => profilesIn(keyways).map((keyway) => ({ goer, keyway }))),
  );
  if (pairs.length < 2) return notUnderstood(['One of them has no keyway or no blank.'], mentions, knowledge);
  const answers = pairs.map(({ goer, keyway }) => goesIn(knowledge, goer, keyway));
  const meanings = crossings.flatMap(({ goers, keyways }) => [...goers, ...keyways]);
  const sentences = [
    ...correctionsOf(meanings),
    ...sayBoth(answers),
    ...pairs.map(({ goer, keyway }) => sayPair(goer, keyway, knowledge, false)),
  ];
  const profiles = unique(pairs.flatMap(({ goer, keyway }) => [goer.id, keyway.id]));
  return { kind: answers.includes(undefined) ? 'not judged yet' : 'answer', sentences, profiles, choices: [] };
}

function sayBoth(answers: readonly (boolean | undefined)[]): string[] {
  if (answers.includes(undefined)) return [];
  if (!answers.includes(true)) return ['Neither goes into the other.'];
  return [
    answers.includes(false) ? 'One goes into the other, but not the other way round.' : 'Each goes into the other.',
  ];
}
