import type { KnownFits } from '../../family/known-fits.ts';
import { combOf } from '../state/fits-lookup.ts';
import { isRunning } from '../state/results-state.ts';
import styles from './notices.module.css';
import { useFamily } from './use-family.ts';
import { useSession, useStore } from './use-store.ts';

/** How far the judging has come, with a way to stop it; and what to do when it stopped or failed. */
export function JudgingNotice() {
  const { documents, results, judging } = useSession();
  const editing = useStore(documents, (s) => s.editedFrom !== null);
  const family = useFamily();
  const { phase, done, total, trouble, fits } = useStore(results, (s) => s);
  // What tests wait for; an edit under way is judged all the time, which is no news.
  if (!family || phase === 'idle' || phase === 'done' || (editing && isRunning(phase)))
    return <span hidden data-judging={phase} />;
  const again = (
    <button type="button" className="key" onClick={() => judging.again()}>
      Judge again
    </button>
  );
  return (
    <div className={styles.judging} data-phase={phase} data-judging={phase}>
      {isRunning(phase) && (
        <>
          <label htmlFor="judging-progress">
            {phase === 'judging' ? 'Judging pairs' : 'Measuring depths'}
            {total > 0 ? `: ${done} of ${total}` : ''}
          </label>
          <progress id="judging-progress" max={Math.max(1, total)} value={done} />
          <button type="button" className="key" onClick={() => judging.stop()}>
            Stop
          </button>
        </>
      )}
      {phase === 'stopped' && (
        <p>
          {allJudged(fits) ? 'Measuring' : 'Judging'} was stopped. {again}
        </p>
      )}
      {phase === 'failed' && (
        <p role="alert">
          Judging failed: {trouble} {again}
        </p>
      )}
    </div>
  );
}

/** Whether every pair has its verdict, so that only the depths of blocked ones are missing. */
function allJudged(fits: KnownFits | null): boolean {
  return fits?.fits.every((row) => !combOf(row).includes('.')) ?? false;
}
