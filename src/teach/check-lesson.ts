import type { Family } from '../family/family.ts';
import type { Lesson, LessonStep, StepShow } from '../family/lesson.ts';

/** What a step of each kind cannot be shown without. */
const NEEDS: Readonly<Record<StepShow, { blank: boolean; opening: boolean }>> = {
  words: { blank: false, opening: false },
  pair: { blank: true, opening: true },
  wall: { blank: true, opening: false },
  tiers: { blank: false, opening: false },
  passage: { blank: false, opening: false },
  question: { blank: true, opening: true },
};

/** Something that a step asks for and the family does not have. */
export interface StepFault {
  /** Number of the step, from 0. */
  readonly step: number;
  readonly field: 'blank' | 'opening' | 'openings';
  /** What is wrong and what to do, in a sentence. */
  readonly words: string;
}

/**
 * Everything in a lesson that the family cannot show: sections that are gone, and parts that were not picked. A lesson
 * with such steps is kept and shown; the steps say what is missing.
 *
 * @check tests/unit/teach/lesson.test.ts
 */
export function checkLesson(family: Family, { steps }: Lesson): StepFault[] {
  return steps.flatMap((step, i) => stepFaults(family, step).map((fault) => ({ step: i, ...fault })));
}

/** What {@link checkLesson} finds in one step. */
export function stepFaults(family: Family, step: LessonStep): Omit<StepFault, 'step'>[] {
  const { blank, opening } = NEEDS[step.show];
  const faults: Omit<StepFault, 'step'>[] = [];
  const entrants = idsOf(family, false);
  const openings = idsOf(family, true);
  if (blank || (step.show === 'tiers' && step.blank)) faults.push(...idFault('blank', 'blank', step.blank, entrants));
  if (opening) faults.push(...idFault('opening', 'keyway', step.opening, openings));
  if (step.show !== 'wall' && step.show !== 'passage') return faults;
  const gone = step.openings?.filter((id) => !openings.has(id)) ?? [];
  if (gone.length > 0)
    faults.push({
      field: 'openings',
      words: `${quoted(gone)} ${gone.length === 1 ? 'is' : 'are'} no longer in the family.`,
    });
  const left = step.openings ? step.openings.length - gone.length : openings.size;
  if (left === 0 && gone.length === 0)
    faults.push({ field: 'openings', words: 'No keyway is picked: pick at least one.' });
  return faults;
}

function idFault(field: 'blank' | 'opening', word: string, id: string | undefined, known: ReadonlySet<string>) {
  if (id === undefined) return [{ field, words: `No ${word} is picked: pick one.` }];
  return known.has(id) ? [] : [{ field, words: `The ${word} "${id}" is no longer in the family: pick another.` }];
}

function idsOf({ profiles }: Family, isOpening: boolean): ReadonlySet<string> {
  return new Set(profiles.filter(({ kind }) => (kind === 'opening') === isOpening).map(({ id }) => id));
}

function quoted(ids: readonly string[]): string {
  return ids.map((id) => `"${id}"`).join(', ');
}
