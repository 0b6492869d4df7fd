import styles from './notices.module.css';
import { useFamily } from './use-family.ts';
import { useSession, useStore } from './use-store.ts';

/** How far the judging has come, with a way to stop it; and what to do when it stopped or failed. */
export function JudgingNotice() {
  const { results, judging } = useSession();
  const family = useFamily();
  const { phase, done, total, trouble } = useStore(results, (s) => s);
  if (!family || phase === 'idle' || phase === 'done') return null;
  const again = (
    <button type="button" className="key" onClick={() => judging.start(family)}>
      Judge again
    </button>
  );
  return (
    <div className={styles.judging} data-phase={phase}>
      {phase === 'running' && (
        <>
          <label htmlFor="judging-progress">Judging pairs{total > 0 ? `: ${done} of ${total}` : ''}</label>
          <progress id="judging-progress" max={Math.max(1, total)} value={done} />
          <button type="button" className="key" onClick={() => judging.stop()}>
            Stop
          </button>
        </>
      )}
      {phase === 'stopped' && <p>Judging was stopped. {again}</p>}
      {phase === 'failed' && (
        <p role="alert">
          Judging failed: {trouble} {again}
        </p>
      )}
    </div>
  );
}
