import { useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { AlteredLine } from '../../panels/compare/altered-line.tsx';
import { LessonPreview } from '../../panels/teach/lesson-preview.tsx';
import { type Ready, ReadyKey, useReadyLesson } from '../../panels/teach/ready-lesson.tsx';
import { StepKeys } from '../../panels/teach/step-keys.tsx';
import { StepList } from '../../panels/teach/step-list.tsx';
import { useFocusAlong } from '../../panels/use-focus-along.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { addStepAfter, stepWithin } from '../../state/teach/lesson-editing.ts';
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
  // Where the last step goes, and where steps come back.
  useFocusAlong(steps.length > 0, steps.length > 0 ? '[data-step][aria-current="step"]' : '[data-begin]');
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

/** The title of a new lesson's first step is what is typed first; the step is drawn as soon as the press is done. */
function focusTitle(): void {
  queueMicrotask(() => {
    const title = document.querySelector<HTMLTextAreaElement>('[data-step-form] textarea');
    title?.focus();
    title?.select();
  });
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
