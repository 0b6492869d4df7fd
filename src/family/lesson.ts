/** What a step of a lesson shows. `question`: a pair with the answer hidden at first. */
export type StepShow = 'words' | 'pair' | 'wall' | 'tiers' | 'passage' | 'question';

/** One step of a lesson; ids may be those of profiles that the family no longer has. */
export interface LessonStep {
  readonly show: StepShow;
  readonly title: string;
  readonly words?: string;
  /** Id of a blank or tool. */
  readonly blank?: string;
  /** Id of a keyway. */
  readonly opening?: string;
  /** Ids of keyways, where several are shown; all where absent. */
  readonly openings?: readonly string[];
  /** Whether the blank is pushed in from the front. */
  readonly push?: boolean;
}

/** A script to show a room, step by step. */
export interface Lesson {
  readonly title: string;
  readonly steps: readonly LessonStep[];
}
