import type { Answer, Choice } from './answer.ts';
import { EXAMPLE_FORMS } from './example-forms.ts';
import type { Knowledge } from './knowledge.ts';
import type { Mention } from './mention.ts';

/**
 * That a question was not understood, why where that is known, and questions that can be asked, filled with the names that
 * were found or those of the family.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function notUnderstood(
  sentences: readonly string[],
  mentions: readonly Mention[],
  knowledge: Knowledge,
  first: readonly Choice[] = [],
): Answer {
  const examples = exampleQuestions(mentions, knowledge).filter(
    ({ question }) => !first.some((choice) => choice.question === question),
  );
  return { kind: 'not understood', sentences, profiles: [], choices: [...first, ...examples] };
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
