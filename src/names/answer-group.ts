import type { Answer } from './answer.ts';
import { answerWhatGoesIn, answerWhere } from './answer-entries.ts';
import { answerPairs } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import type { Reading } from './read-question.ts';
import { withMeanings } from './take-meaning.ts';

/**
 * A group of keyways is what a group blank goes into: whether one is in it, what is in it, or which groups one is in.
 *
 * @returns null where a group is spoken of but not asked about.
 * @check tests/unit/names/ask.test.ts
 */
export function answerGroup(question: string, reading: Reading, knowledge: Knowledge): Answer | null {
  const { mentions, turned } = reading;
  const { groups } = turned;
  const others = mentions.filter((mention) => !groups.includes(mention));
  if (groups.length === 1)
    return withMeanings(question, groups, 'entrant', knowledge, (goers) =>
      others.length === 0
        ? answerWhere(goers, reading, knowledge)
        : withMeanings(question, others, 'opening', knowledge, (keyways) =>
            answerPairs(goers, keyways, reading, knowledge),
          ),
    );
  if (groups.length > 0 || others.length !== 1 || !/\b(what|which|belongs?|in)\b/.test(turned.outline)) return null;
  return withMeanings(question, others, 'opening', knowledge, (keyways) =>
    answerWhatGoesIn(keyways, { ...reading, asked: 'blank', excluded: [] }, knowledge),
  );
}
