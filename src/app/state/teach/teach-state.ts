import { makeStore, type Store } from '../store.ts';

/** The sheets of the Teach view: the script of the lesson, the quiz. */
export const TEACH_SHEETS = ['lesson', 'quiz'] as const;

/** See {@link TEACH_SHEETS}. */
export type TeachSheet = (typeof TEACH_SHEETS)[number];

/** What the Teach view shows. */
export interface TeachState {
  readonly sheet: TeachSheet;
  /** Number of the step that is picked in the script. */
  readonly step: number;
  /** Whether the lesson fills the screen. */
  readonly presenting: boolean;
}

/** A store that shows the script. */
export function makeTeachStore(): Store<TeachState> {
  return makeStore<TeachState>({ sheet: 'lesson', step: 0, presenting: false });
}
