import type { Answer, Choice } from './answer.ts';
import { EXAMPLE_FORMS } from './example-forms.ts';
import type { Knowledge } from './knowledge.ts';
import type { Mention } from './mention.ts';
import { canBe, type Role } from './resolve.ts';

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
  const entrants = family.profiles.filter(({ kind }) => kind !== 'opening').map(({ name }) => name);
  const openings = family.profiles.filter(({ kind }) => kind === 'opening').map(({ name }) => name);
  return EXAMPLE_FORMS.flatMap(({ slots, question }) => {
    const [nextEntrant, nextOpening] = [[...entrants], [...openings]];
    const found = mentions.filter(({ resolution }) => resolution.kind === 'found');
    const names = slots.map(
      (slot) => takeFor(found, slot) ?? (slot === 'opening' ? nextOpening.shift() : nextEntrant.shift()),
    );
    if (names.some((name) => name === undefined)) return [];
    const written = question(names.filter((name) => name !== undefined));
    return [{ label: written, question: written }];
  });
}

/** Takes the first name out of a list that can have a part: one of that kind only, else one that may be both. */
function takeFor(found: Mention[], slot: Role | null): string | undefined {
  const can = ({ resolution }: Mention, role: Role) =>
    resolution.kind === 'found' && resolution.senses.some((sense) => canBe(sense, role));
  const other = slot === 'opening' ? 'entrant' : 'opening';
  const own = slot === null ? -1 : found.findIndex((one) => can(one, slot) && !can(one, other));
  const at = own >= 0 ? own : found.findIndex((one) => slot === null || can(one, slot));
  return at < 0 ? undefined : found.splice(at, 1)[0].text;
}
