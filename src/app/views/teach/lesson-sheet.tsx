import { useEffect, useRef, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { makeLesson } from '../../../teach/make-lesson.ts';
import { AlteredLine } from '../../panels/compare/altered-line.tsx';
import { LessonPreview } from '../../panels/teach/lesson-preview.tsx';
import { StepKeys } from '../../panels/teach/step-keys.tsx';
import { StepList } from '../../panels/teach/step-list.tsx';
import { useTeaching } from '../../panels/teach/use-teaching.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { isRunning } from '../../state/results-state.ts';
import { addStepAfter, stepWithin, takeLesson } from '../../state/teach/lesson-editing.ts';
import styles from './lesson-sheet.module.css';
import { useLessonKeys } from './use-lesson-keys.ts';

/** The script, step by step: the list, the picked step as the room sees it, and the way to show it. */
export function LessonSheet({ family }: { family: Family }) {
  const session = useSession();
  const { teach } = session;
  const step = useStore(teach, (s) => s.step);
  const presenting = useStore(teach, (s) => s.presenting);
  const [told, tell] = useState('');
  const { lesson } = family;
  const steps = lesson?.steps ?? [];
  const picked = stepWithin(step, steps);
  const present = () => {
    if (steps.length > 0) teach.setState({ step: picked, presenting: true });
  };
  useLessonKeys(present);
  const ready = useReadyLesson(family, tell);
  useFocusWithSteps(steps.length > 0);
  const begin = () => {
    addStepAfter(session, 'words');
    focusTitle();
  };
  if (!lesson || steps.length === 0) return <NoLesson ready={ready} begin={begin} />;
  return (
    <div className={styles.sheet}>
      <header className={styles.head}>
        <h1>{lesson.title}</h1>
        <button
          type="button"
          className={`key ${styles.present}`}
          data-present
          title="Show it from the picked step on (P or F5)"
          onClick={present}
        >
          Present ▶
        </button>
        <ReadyKey {...ready} />
        <AlteredLine />
      </header>
      <div className={styles.script}>
        <StepList family={family} lesson={lesson} picked={picked} />
        <StepKeys picked={picked} count={steps.length} tell={tell} />
      </div>
      {presenting ? <div /> : <LessonPreview family={family} step={steps[picked]} number={picked + 1} />}
      <footer className={styles.foot}>
        <p role="status">{told}</p>
        <p className={styles.hint}>
          <kbd>P</kbd> or <kbd>F5</kbd> presents · <kbd>↑</kbd> <kbd>↓</kbd> step · <kbd>Alt</kbd> with them moves it ·{' '}
          <kbd>D</kbd> duplicates · <kbd>Delete</kbd>
        </p>
      </footer>
    </div>
  );
}

/** Where the last step goes, and where steps come back, the focus goes along. */
function useFocusWithSteps(any: boolean): void {
  const had = useRef(any);
  useEffect(() => {
    if (had.current === any) return;
    had.current = any;
    if (document.activeElement !== document.body) return;
    document.querySelector<HTMLElement>(any ? '[data-step][aria-current="step"]' : '[data-begin]')?.focus();
  }, [any]);
}

/** The title of a new lesson's first step is what is typed first; the step is drawn as soon as the press is done. */
function focusTitle(): void {
  queueMicrotask(() => {
    const title = document.querySelector<HTMLTextAreaElement>('[data-step-form] textarea');
    title?.focus();
    title?.select();
  });
}

interface Ready {
  /** Why no lesson can be made yet; empty where it can. */
  readonly wait: string;
  make(): void;
}

/** A lesson made from the family, once every pair is judged. */
function useReadyLesson(family: Family, tell: (words: string) => void): Ready {
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
  return { wait, make };
}

function ReadyKey({ wait, make }: Ready) {
  return (
    <button
      type="button"
      className="key"
      disabled={wait !== ''}
      title={
        wait || 'A lesson made from what this family has; it takes the place of the one here, and undo brings that back'
      }
      onClick={make}
    >
      Make a lesson from this family
    </button>
  );
}

function NoLesson({ ready, begin }: { ready: Ready; begin(): void }) {
  return (
    <section className={styles.none}>
      <h1>No lesson yet</h1>
      <p>
        A lesson is a script of steps that a room is shown: a blank pushed into a keyway, one blank in every keyway, the
        tiers, a question. It is kept in the family file.
      </p>
      <div className={styles.ways}>
        <ReadyKey {...ready} />
        <button type="button" className="key" data-begin="" onClick={begin}>
          Begin with one step
        </button>
      </div>
      {ready.wait && <p>{ready.wait}</p>}
    </section>
  );
}
