import type { LessonStep } from '../../../family/lesson.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { isAltered } from '../../state/conditions-state.ts';
import { alteredText } from '../../state/conditions-words.ts';
import styles from './presenter.module.css';

/** Says to the room that pairs are judged worn or tilted, where they are and the step shows any. */
export function ConditionsNote({ step }: { step: LessonStep }) {
  const { conditions, settings } = useSession();
  const state = useStore(conditions, (s) => s);
  const units = useStore(settings, (s) => s.units);
  if (!isAltered(state) || step.show === 'words' || step.show === 'passage') return null;
  return (
    <p className={styles.conditions} data-altered="">
      {alteredText({ ...state, blankTolerance: null, openingTolerance: null }, units)}
    </p>
  );
}
