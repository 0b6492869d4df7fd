import styles from './grow-progress.module.css';
import { useGrowth } from './use-growth.ts';

/** How far the search has come, with a way to stop it; and what to do when it stopped or failed. */
export function GrowProgress() {
  const { phase, done, total, trouble, finding } = useGrowth();
  if (phase === 'idle' || phase === 'found') return null;
  const again = (
    <button type="button" className="key" onClick={() => finding.again()}>
      Look again
    </button>
  );
  return (
    <div className={styles.line} data-phase={phase}>
      {phase === 'finding' && (
        <>
          <label htmlFor="grow-progress">Trying wards, drawing and judging sections</label>
          <progress id="grow-progress" max={Math.max(1, total)} value={done} />
          <button type="button" className="key" onClick={() => finding.stop()}>
            Stop
          </button>
        </>
      )}
      {phase === 'stopped' && <p>The search was stopped. {again}</p>}
      {phase === 'failed' && (
        <p role="alert">
          The search failed: {trouble}. {again}
        </p>
      )}
    </div>
  );
}
