import type { Lesson, LessonStep } from '../../family/lesson.ts';
import type { FamilyFile, LessonFile } from './schema.ts';

type StepFile = LessonFile['steps'][number];

/** What a lesson is called before it is given a title. */
const NEW_TITLE = 'A lesson';

/** The family with this lesson in place of the one it has. */
export function putLesson(file: FamilyFile, { title, steps }: Lesson): FamilyFile {
  return { ...file, lesson: { ...file.lesson, title, steps: steps.map(stepFile) } };
}

/** The family without a lesson. */
export function dropLesson(file: FamilyFile): FamilyFile {
  const { lesson: _, ...rest } = file;
  return rest;
}

/** The family with another title over its lesson; with an empty lesson where it had none. */
export function setLessonTitle(file: FamilyFile, title: string): FamilyFile {
  return { ...file, lesson: { ...lessonOf(file), title } };
}

/**
 * The family with one more step.
 *
 * @param at its number among the steps; at the end where there are not so many.
 */
export function addStep(file: FamilyFile, at: number, step: LessonStep): FamilyFile {
  const lesson = lessonOf(file);
  return { ...file, lesson: { ...lesson, steps: lesson.steps.toSpliced(at, 0, stepFile(step)) } };
}

/**
 * The family with some fields of a step changed; a field that is undefined is taken out. Fields unknown to the format
 * stay.
 *
 * @throws RangeError where there is no step of that number.
 */
export function changeStep(
  file: FamilyFile,
  at: number,
  change: { [F in keyof LessonStep]?: LessonStep[F] | undefined },
): FamilyFile {
  const lesson = lessonOf(file);
  const changed = { ...stepAt(lesson, at), ...change };
  const kept = Object.fromEntries(Object.entries(changed).filter(([, value]) => value !== undefined));
  return { ...file, lesson: { ...lesson, steps: lesson.steps.with(at, kept as StepFile) } };
}

/**
 * The family with a step in another place among its steps.
 *
 * @param to the number that it then has; the nearest there is.
 * @throws RangeError where there is no step of the number `from`.
 */
export function moveStep(file: FamilyFile, from: number, to: number): FamilyFile {
  const lesson = lessonOf(file);
  const step = stepAt(lesson, from);
  const place = Math.max(0, Math.min(lesson.steps.length - 1, to));
  if (place === from) return file;
  return { ...file, lesson: { ...lesson, steps: lesson.steps.toSpliced(from, 1).toSpliced(place, 0, step) } };
}

/**
 * The family without a step.
 *
 * @throws RangeError where there is no step of that number.
 */
export function removeStep(file: FamilyFile, at: number): FamilyFile {
  const lesson = lessonOf(file);
  stepAt(lesson, at);
  return { ...file, lesson: { ...lesson, steps: lesson.steps.toSpliced(at, 1) } };
}

/**
 * The family with a step twice, the second after the first.
 *
 * @throws RangeError where there is no step of that number.
 */
export function duplicateStep(file: FamilyFile, at: number): FamilyFile {
  const lesson = lessonOf(file);
  return { ...file, lesson: { ...lesson, steps: lesson.steps.toSpliced(at + 1, 0, stepAt(lesson, at)) } };
}

function lessonOf({ lesson }: FamilyFile): LessonFile {
  return lesson ?? { title: NEW_TITLE, steps: [] };
}

function stepAt({ steps }: LessonFile, at: number): StepFile {
  const step = steps[at];
  if (!step) throw new RangeError(`no step ${at + 1} in a lesson of ${steps.length}`);
  return step;
}

function stepFile({ openings, ...step }: LessonStep): StepFile {
  return { ...step, ...(openings ? { openings: [...openings] } : {}) };
}
