import type { Answer } from './answer.ts';
import { answerPairs } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import { notUnderstood } from './not-understood.ts';
import type { Reading } from './read-question.ts';
import { sectionsOf } from './register.ts';
import { withMeanings } from './take-meaning.ts';

/**
 * Whether a section stands between two others in chart order, and that this says nothing of where its blank goes.
 *
 * @returns null where "between" is said of a difference, of room, or beside another question.
 * @check tests/unit/names/ask.test.ts
 */
export function answerBetween(question: string, reading: Reading, knowledge: Knowledge): Answer | null {
  const { mentions, form } = reading;
  if (form !== 'what is' && form !== 'not understood') return null;
  if (mentions.length !== 3)
    return notUnderstood(['That was not understood. These can be asked:'], mentions, knowledge);
  const [middle, ...ends] = mentions;
  return withMeanings(question, [middle], 'entrant', knowledge, (goers) =>
    withMeanings(question, ends, 'opening', knowledge, (keyways) => {
      const pairs = answerPairs(goers, keyways, { ...reading, yesOrNo: false }, knowledge);
      const order = sayOrder(
        goers[0].sense.section,
        keyways.map(({ sense }) => sense.section),
        knowledge,
      );
      const own = 'An in-between section is a section of its own, with its own keyway.';
      return { ...pairs, sentences: [...order, own, ...pairs.sentences] };
    }),
  );
}

function sayOrder(middle: string | null, ends: readonly (string | null)[], { family }: Knowledge): string[] {
  const order = sectionsOf(family);
  const [at, ...places] = [middle, ...ends].map((section) => (section === null ? -1 : order.indexOf(section)));
  if (at < 0 || places.some((place) => place < 0)) return [];
  const isBetween = Math.min(...places) < at && at < Math.max(...places);
  return [
    `In the order of the chart ${middle} ${isBetween ? 'stands' : 'does not stand'} between ${ends.join(' and ')}.`,
  ];
}
