import { examiningOf } from '../../../state/plan/strength/examining-strength.ts';
import styles from '../../job-progress.module.css';
import { useSession, useStore } from '../../use-store.ts';

/** How far the examining has come, with a way to stop it; and what to do when it stopped or something failed. */
export function StrengthProgress() {
  const examining = examiningOf(useSession());
  const { phase, begun, done, total, troubles } = useStore(examining.store, (s) => s);
  const again = (
    <button type="button" className="key" onClick={() => examining.again()}>
      Go on
    </button>
  );
  if (phase === 'working')
    return (
      <div className={styles.line} data-phase={phase}>
        <label htmlFor="strength-progress">
          {begun < total
            ? `First answers: ${begun} of ${total} outlines`
            : `Coming closer: ${done} of ${total} outlines`}
        </label>
        <progress id="strength-progress" max={2 * total} value={begun + done} />
        <button type="button" className="key" onClick={() => examining.stop()}>
          Stop
        </button>
      </div>
    );
  if (phase === 'stopped')
    return (
      <div className={styles.line} data-phase={phase}>
        <p>
          Stopped: {begun} of {total} outlines are known, {done} of them as closely as asked.
        </p>
        {again}
      </div>
    );
  if (troubles.length === 0) return null;
  return (
    <div className={styles.line} data-phase="failed" role="alert">
      <p>
        {troubles.length} of {total} outlines could not be solved: {troubles[0]}
      </p>
      {again}
    </div>
  );
}
