import type { Family } from '../../../family/family.ts';
import { makeLesson } from '../../../teach/make-lesson.ts';
import { isRunning } from '../../state/results-state.ts';
import { takeLesson } from '../../state/teach/lesson-editing.ts';
import { useSession, useStore } from '../use-store.ts';
import { useTeaching } from './use-teaching.ts';

/** Making a lesson of the family. */
export interface Ready {
  /** Why no lesson can be made yet; empty where it can. */
  readonly wait: string;
  /** Whether it takes the place of one. */
  readonly replaces: boolean;
  make(): void;
}

/** A lesson made from the family, once every pair is judged. */
export function useReadyLesson(family: Family, tell: (words: string) => void): Ready {
  const session = useSession();
  const knowledge = useTeaching(family);
  const phase = useStore(session.results, (s) => s.phase);
  const isEmpty = family.profiles.length === 0;
  const judging = isRunning(phase) ? 'The pairs are still being judged …' : '';
  const wait = isEmpty ? 'The family has no section yet: draw some, or take those of its plan' : judging;
  const make = () => {
    const had = session.documents.getState().document?.family.lesson !== undefined;
    const faults = takeLesson(session, makeLesson(knowledge));
    if (faults) tell(faults.map(({ what, cure }) => `${what}. ${cure}`).join(' '));
    else
      tell(
        had ? 'A ready lesson stands in place of the one before. Undo brings that back.' : 'A ready lesson was made.',
      );
  };
  return { wait, replaces: Boolean(family.lesson?.steps.length), make };
}

/** Makes it, in place of the lesson that is there. */
export function ReadyKey({ wait, replaces, make }: Ready) {
  return (
    <button
      type="button"
      className="key"
      disabled={wait !== ''}
      data-ready-key=""
      title={
        wait ||
        `A lesson made from what this family has${replaces ? '; it takes the place of the one here, and undo brings that back' : ''}`
      }
      onClick={make}
    >
      Make a lesson from this family
    </button>
  );
}
