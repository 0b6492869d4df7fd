import styles from './passage-progress.module.css';
import { useFoundPassage } from './use-passage.ts';

/** How far the search has come, with a way to stop it; and what to do when it stopped or failed. */
export function PassageProgress({ what }: { what: string }) {
  const { phase, done, total, trouble, finding } = useFoundPassage();
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
          <label htmlFor="passage-progress">Looking for the best alignment of {what}</label>
          <progress id="passage-progress" max={Math.max(1, total)} value={done} />
          <button type="button" className="key" onClick={() => finding.stop()}>
            Stop
          </button>
        </>
      )}
      {phase === 'stopped' && <p>The search was stopped; what is drawn is the answer before it. {again}</p>}
      {phase === 'failed' && (
        <p role="alert">
          The search failed: {trouble}. {again}
        </p>
      )}
    </div>
  );
}
