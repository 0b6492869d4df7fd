import type { Lesson, LessonStep, StepShow } from '../../../family/lesson.ts';
import type { FileFault } from '../../../interchange/json/file-fault.ts';
import type { FamilyFile } from '../../../interchange/json/schema.ts';
import { editFamily, previewFamily } from '../edit-document.ts';
import type { Session } from '../session.ts';

type Window = Pick<Session, 'documents' | 'doors' | 'teach' | 'selection'>;

/** The steps of the open family's lesson; none where it has no lesson. */
export function stepsNow({ documents }: Pick<Session, 'documents'>): readonly LessonStep[] {
  return documents.getState().document?.family.lesson?.steps ?? [];
}

/** The number of the picked step, which an undo may have left behind the last one; -1 without steps. */
export function stepWithin(step: number, steps: readonly LessonStep[]): number {
  return Math.min(step, steps.length - 1);
}

/** Picks a step of the script; the nearest there is. */
export function pickStep({ documents, teach }: Pick<Session, 'documents' | 'teach'>, step: number): void {
  teach.setState({ step: Math.max(0, stepWithin(step, stepsNow({ documents }))) });
}

/** Titles that a new step begins with. */
const FIRST_TITLES: Readonly<Record<StepShow, string>> = {
  words: 'A few words',
  pair: 'Does it go in?',
  wall: 'In every keyway',
  tiers: 'Tier by tier',
  passage: 'What they have in common',
  question: 'What do you think?',
};

/** Adds a step after the picked one, with the blank and the keyway that are picked in the tray, and picks it. */
export function addStepAfter(session: Window, show: StepShow): void {
  const { entrantId, openingId } = session.selection.getState();
  const at = stepWithin(session.teach.getState().step, stepsNow(session)) + 1;
  const pair = show === 'pair' || show === 'question';
  const step: LessonStep = {
    show,
    title: FIRST_TITLES[show],
    ...((pair || show === 'wall') && entrantId !== null ? { blank: entrantId } : {}),
    ...(pair && openingId !== null ? { opening: openingId } : {}),
  };
  if (!editFamily(session, (file) => session.doors.lesson.addStep(file, at, step))) pickStep(session, at);
}

/** Takes the picked step out. */
export function deleteStep(session: Window, at: number): void {
  if (!editFamily(session, (file) => session.doors.lesson.removeStep(file, at))) pickStep(session, at);
}

/** Makes the step a second time, and picks that one. */
export function doubleStep(session: Window, at: number): void {
  if (!editFamily(session, (file) => session.doors.lesson.duplicateStep(file, at))) pickStep(session, at + 1);
}

/** Moves a step to another place and keeps it picked. */
export function shiftStep(session: Window, from: number, to: number): void {
  const last = stepsNow(session).length - 1;
  if (to < 0 || to > last) return;
  if (!editFamily(session, (file) => session.doors.lesson.moveStep(file, from, to))) pickStep(session, to);
}

/** Puts a whole lesson in place of the one that is there. */
export function takeLesson(session: Window, lesson: Lesson): readonly FileFault[] | null {
  const faults = editFamily(session, (file) => session.doors.lesson.putLesson(file, lesson));
  if (!faults) pickStep(session, 0);
  return faults;
}

/** What may be changed in a step; undefined takes a field out. */
export type StepChange = { [F in keyof LessonStep]?: LessonStep[F] | undefined };

/** Changes fields of a step at once. */
export function changeStepNow(session: Window, at: number, change: StepChange): readonly FileFault[] | null {
  return editFamily(session, (file) => session.doors.lesson.changeStep(file, at, change));
}

/** Changes fields of a step while somebody types; leaving the field ends the edit, which is one step of undo. */
export function typeIntoStep(session: Window, at: number, change: StepChange): readonly FileFault[] | null {
  return type(session, (file) => session.doors.lesson.changeStep(file, at, change));
}

/** Changes the title of the lesson while somebody types. */
export function typeTitle(session: Window, title: string): readonly FileFault[] | null {
  return type(session, (file) => session.doors.lesson.setLessonTitle(file, title));
}

function type({ documents, doors }: Window, change: (file: FamilyFile) => FamilyFile): readonly FileFault[] | null {
  const file = documents.getState().document?.file;
  return file ? previewFamily(documents, doors, change(file)) : null;
}
