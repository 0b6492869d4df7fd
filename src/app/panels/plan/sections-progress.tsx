import { workWords } from '../../state/plan/sections-words.ts';
import { useStore } from '../use-store.ts';
import styles from './sections-progress.module.css';
import { useSectionsPlanning } from './use-sections.ts';

/** What is on its way, how far it has come, and a key that stops it; what stopped or failed can be taken up again. */
export function SectionsProgress() {
  const planning = useSectionsPlanning();
  const state = useStore(planning.store, (s) => s);
  const words = workWords(state);
  const { drawing, phase, trouble } = state;
  if (words !== '') {
    const { done, total } = drawing.phase === 'drawing' && phase !== 'improving' ? drawing : state;
    return (
      <div className={styles.line} data-working={phase === 'improving' || undefined}>
        <label htmlFor="sections-progress">{words} …</label>
        <progress id="sections-progress" max={Math.max(1, total)} value={total > 0 ? done : undefined} />
        <button type="button" className="key" onClick={() => planning.stop()}>
          Cancel
        </button>
      </div>
    );
  }
  const what = restWords(phase, trouble, drawing);
  if (!what) return null;
  return (
    <div className={styles.line} data-working="" role={what.failed ? 'alert' : undefined}>
      <p>{what.words}</p>
      <button type="button" className="key" onClick={() => planning.again()}>
        {what.again}
      </button>
    </div>
  );
}

type State = ReturnType<ReturnType<typeof useSectionsPlanning>['store']['getState']>;

function restWords(phase: State['phase'], trouble: string, drawing: State['drawing']) {
  if (phase === 'failed')
    return { words: `The wards could not be found: ${trouble}.`, again: 'Try again', failed: true };
  if (drawing.phase === 'failed')
    return { words: `The sections could not be drawn: ${drawing.trouble}.`, again: 'Try again', failed: true };
  if (drawing.phase === 'stopped')
    return { words: 'The drawing was stopped, so nothing is judged.', again: 'Draw the sections', failed: false };
  if (phase === 'stopped' && drawing.phase === 'none')
    return { words: 'The search was stopped before it found anything.', again: 'Search again', failed: false };
  return null;
}
