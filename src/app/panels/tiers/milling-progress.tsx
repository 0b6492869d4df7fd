import styles from './passage-progress.module.css';
import { useMadePassage } from './use-milled-passage.ts';

/** How far the search for a milled blank has come, and what there is to say where it ended without one. */
export function MillingProgress() {
  const { phase, done, total, trouble, milling } = useMadePassage();
  if (phase === 'off' || phase === 'found') return null;
  const again = (
    <button type="button" className="key" onClick={() => milling.again()}>
      Look again
    </button>
  );
  return (
    <div className={styles.line} data-phase={phase}>
      {phase === 'finding' && (
        <>
          <label htmlFor="milling-progress">Looking for what the cutter can mill</label>
          <progress id="milling-progress" max={Math.max(1, total)} value={done} />
          <button type="button" className="key" onClick={() => milling.stop()}>
            Stop
          </button>
        </>
      )}
      {phase === 'none' && (
        <p role="alert">
          This cutter can mill no blank that enters them all. Give a narrower groove, a smaller root radius, or a
          thinner or lower plain blade.
        </p>
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
