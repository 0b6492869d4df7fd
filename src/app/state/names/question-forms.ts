import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import type { NameKind } from '../../../family/name-entry.ts';
import { EXAMPLE_FORMS, type ExampleForm } from '../../../names/example-forms.ts';
import { registerOf, type Sense } from '../../../names/register.ts';
import { canBe, profilesOf, type Role } from '../../../names/resolve.ts';
import { NAME_KINDS } from './name-rows.ts';

/** A form of a question that can be put together from names: what stands before, between and behind them. */
export interface QuestionForm extends ExampleForm {
  /** One more than there are names. */
  readonly words: readonly string[];
}

/** Every form of a question, in the order of the core. */
export const QUESTION_FORMS: readonly QuestionForm[] = EXAMPLE_FORMS.map((form) => ({
  ...form,
  words: form.label.split(/\b[XYZ]\b/).map((words) => words.trim()),
}));

/** A form as a list names it: "does … go into …?" */
export function formTitle({ words, slots }: QuestionForm): string {
  return `${words
    .map((part, i) => (i < slots.length ? `${part} …` : part))
    .join(' ')
    .replace(/\s+/g, ' ')
    .trim()}?`;
}

/** Questions as they would be typed. */
export const whatIs = (name: string) => fill('what is X', [name]);
const doesGoInto = (entrant: string, opening: string) => fill('does X go into Y', [entrant, opening]);
const whatGoesInto = (opening: string) => fill('what goes into Y', [opening]);
const whatDiffers = (one: string, other: string) => fill('what differs between X and Z', [one, other]);

function fill(label: string, names: readonly string[]): string {
  return QUESTION_FORMS.find((form) => form.label === label)?.question(names) ?? names.join(' ');
}

/** Names of one kind, in the order of the register, each once. */
export interface NameGroup {
  readonly kind: NameKind;
  readonly names: readonly string[];
}

/** More names than this make a list that nobody picks from: then it has the family's own names only. */
const MOST_LISTED = 400;

/** The names that can have a part in a question, by kind; every name where it may be any. */
export function namesFor(family: Family, part: Role | null): NameGroup[] {
  const { senses } = registerOf(family);
  const listed = senses.length > MOST_LISTED ? senses.filter(({ source }) => source !== 'register') : senses;
  const fitting = part === null ? listed : listed.filter((sense) => canBe(sense, part));
  return NAME_KINDS.flatMap((kind) => {
    const names = [...new Set(fitting.filter((sense) => sense.kind === kind).map(({ text }) => text))];
    return names.length > 0 ? [{ kind, names }] : [];
  });
}

/** Whether a name stands for a profile. */
export function standsForProfile(family: Family, name: string, id: string): boolean {
  return registerOf(family).senses.some(
    (sense) => sense.text === name && profilesOf(family, sense).some((profile) => profile.id === id),
  );
}

/**
 * Questions that the open family can be asked, to begin with: a pair, what a name is (one that misled somebody if there
 * is one), what goes into a keyway, two that differ in length.
 */
export function exampleQuestions(family: Family): string[] {
  const { senses } = registerOf(family);
  const [entrants, openings] = [entrantsOf(family), openingsOf(family)];
  const entry = senses.find(({ supersededBy }) => supersededBy !== null) ?? senses.find(isEntry);
  const group = entrants.find(({ section }) => section && !openings.some((opening) => opening.section === section));
  const [first, second] = lengthsOfOneSection(family) ?? entrants;
  const opening = openings.find(({ section }) => section !== first?.section) ?? openings[0];
  const examples: string[] = [];
  if (first && opening) examples.push(doesGoInto(first.name, opening.name));
  if (group && openings[0]) examples.push(doesGoInto(group.name, openings[0].name));
  const named = entry?.text ?? senses.find(({ source }) => source === 'section')?.text;
  if (named !== undefined) examples.push(whatIs(named));
  if (openings[0]) examples.push(whatGoesInto(openings[0].name));
  if (first && second) examples.push(whatDiffers(first.name, second.name));
  return [...new Set(examples)];
}

function isEntry({ source }: Sense): boolean {
  return source === 'register';
}

/** Two blanks of one section that differ in their chambers, if the family has such two. */
function lengthsOfOneSection(family: Family) {
  const blanks = entrantsOf(family).filter(({ section, chambers }) => section !== undefined && chambers !== undefined);
  for (const blank of blanks) {
    const other = blanks.find(({ section, chambers }) => section === blank.section && chambers !== blank.chambers);
    if (other) return [blank, other];
  }
  return null;
}
