import type { QuizQuestion, Said } from '../../../teach/quiz.ts';
import { makeStore, type Store } from '../store.ts';

/** The sheets of the Teach view: the script of the lesson, the quiz. */
export const TEACH_SHEETS = ['lesson', 'quiz'] as const;

/** See {@link TEACH_SHEETS}. */
export type TeachSheet = (typeof TEACH_SHEETS)[number];

/** A round of the quiz. What is right is asked of the core whenever it is shown; it is kept nowhere. */
export interface QuizRound {
  readonly questions: readonly QuizQuestion[];
  /** The answers given so far, in order. */
  readonly said: readonly Said[];
  /** Whether the last answer is being told, before the next question. */
  readonly telling: boolean;
}

/** What the Teach view shows. */
export interface TeachState {
  readonly sheet: TeachSheet;
  /** Number of the step that is picked in the script. */
  readonly step: number;
  /** Whether the lesson fills the screen. */
  readonly presenting: boolean;
  /** The round of the quiz that is on; null before the first. */
  readonly round: QuizRound | null;
}

/** A store that shows the script. */
export function makeTeachStore(): Store<TeachState> {
  return makeStore<TeachState>({ sheet: 'lesson', step: 0, presenting: false, round: null });
}
