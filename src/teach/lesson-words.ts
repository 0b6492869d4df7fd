import { type Family, openingsOf } from '../family/family.ts';
import type { LessonStep } from '../family/lesson.ts';
import type { Profile } from '../profile/profile.ts';
import { listWords, shortNameOf, type TeachingKnowledge, tryIn } from './teaching-knowledge.ts';

/** The profiles that a step shows, as far as the family has them. */
export interface StepParts {
  readonly blank: Profile | null;
  readonly opening: Profile | null;
  /** Those named; all keyways of the family, in chart order, where none is named. */
  readonly openings: readonly Profile[];
}

/** The profiles that a step names, looked up by id and kind; a keyway's id in the place of a blank is not taken. */
export function partsOf(family: Family, step: LessonStep): StepParts {
  const find = (id: string | undefined, isOpening: boolean) =>
    family.profiles.find((profile) => profile.id === id && (profile.kind === 'opening') === isOpening) ?? null;
  const all = openingsOf(family);
  const wanted = step.openings && new Set(step.openings);
  return {
    blank: find(step.blank, false),
    opening: find(step.opening, true),
    openings: wanted ? all.filter(({ id }) => wanted.has(id)) : all,
  };
}

/** The longest list of names that a headline spells out. */
const MOST_NAMED = 8;

/**
 * What is said of a step: its own words, else words made from what is known now, so that they stay true when an
 * outline is edited.
 *
 * @returns a sentence or two; empty where there is nothing to say.
 * @check tests/unit/teach/lesson.test.ts
 */
export function wordsOf(step: LessonStep, knowledge: TeachingKnowledge): string {
  return step.words?.trim() ? step.words : plainWords(step, knowledge);
}

/** The words of a step that has none of its own; see {@link wordsOf}. */
export function plainWords(step: LessonStep, knowledge: TeachingKnowledge): string {
  const { blank, opening, openings } = partsOf(knowledge.family, step);
  switch (step.show) {
    case 'words':
      return '';
    case 'pair':
      return blank && opening ? knowledge.sentence(blank.id, opening.id) : '';
    case 'question':
      return blank && opening ? `Does the ${blank.name} go into the ${opening.name}?` : '';
    case 'wall':
      return blank ? wallWords(knowledge, blank, openings) : '';
    case 'tiers':
      return 'Each blank goes into everything that the blanks on the lines below it go into, and into more.';
    case 'passage':
      return openings.length > 1 ? `What ${listNamed(openings)} leave free in common.` : '';
  }
}

/** "Reed group blank goes into 3 of 10 keyways: Heron, Smew and Bittern." */
function wallWords(knowledge: TeachingKnowledge, blank: Profile, openings: readonly Profile[]): string {
  const { inside, unknown } = tryIn(knowledge, blank.id, openings);
  if (openings.length === 0 || unknown.length > 0) return '';
  const of = `${openings.length} ${openings.length === 1 ? 'keyway' : 'keyways'}`;
  if (inside.length === 0) return `${blank.name} goes into none of ${of}.`;
  if (inside.length === openings.length) return `${blank.name} goes into all ${of}.`;
  const named = inside.length <= MOST_NAMED ? `: ${listWords(inside.map(shortNameOf))}` : '';
  return `${blank.name} goes into ${inside.length} of ${of}${named}.`;
}

function listNamed(openings: readonly Profile[]): string {
  return openings.length <= MOST_NAMED ? listWords(openings.map(shortNameOf)) : `all ${openings.length} keyways`;
}
