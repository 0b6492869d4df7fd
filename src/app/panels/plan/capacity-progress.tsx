import { countingOf } from '../../state/plan/counting-capacity.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './job-progress.module.css';

/** How far the count has come, with a way to stop it; and what to do when it stopped or failed. */
export function CapacityProgress({ waiting }: { waiting: boolean }) {
  const counting = countingOf(useSession());
  const { phase, done, total, trouble } = useStore(counting.store, (s) => s);
  if (waiting)
    return (
      <p className={styles.line} data-phase="waiting">
        Sections are counted once every pair of blank and keyway is judged …
      </p>
    );
  if (phase === 'idle' || phase === 'found') return null;
  const again = (
    <button type="button" className="key" onClick={() => counting.again()}>
      Count again
    </button>
  );
  return (
    <div className={`${styles.line} ${styles.late}`} data-phase={phase}>
      {phase === 'finding' && (
        <>
          <label htmlFor="capacity-progress">Counting</label>
          <progress id="capacity-progress" max={Math.max(1, total)} value={done} />
          <button type="button" className="key" onClick={() => counting.stop()}>
            Stop
          </button>
        </>
      )}
      {phase === 'stopped' && <p>The count was stopped; what is shown is the answer before it. {again}</p>}
      {phase === 'failed' && (
        <p role="alert">
          The count failed: {trouble}. {again}
        </p>
      )}
    </div>
  );
}
