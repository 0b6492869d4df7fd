import { isHalted } from '../../../state/results-state.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './diagram.module.css';

/**
 * Why there is no diagram yet, or not the present one: judging, laying out, stopped, failed. The picture from before
 * stays under it.
 */
export function DiagramNotice({ hasPicture }: { hasPicture: boolean }) {
  const { results, judging, layingOut } = useSession();
  const { phase, done, total } = useStore(results, (s) => s);
  const { phase: laying, slow, trouble } = useStore(layingOut.store, (s) => s);
  if (phase === 'judging')
    return hasPicture ? null : (
      <p className={styles.notice} role="status">
        The diagram stands once every pair is judged: {done} of {total}.
        <progress aria-label="Judging pairs" max={Math.max(1, total)} value={done} />
      </p>
    );
  if (isHalted(phase) && !hasPicture)
    return (
      <p className={styles.notice} role="status">
        Judging was stopped; the diagram needs every pair.
        <button type="button" className="key" onClick={() => judging.again()}>
          Judge again
        </button>
      </p>
    );
  if (laying === 'laying out' && slow)
    return (
      <p className={styles.notice} role="status">
        Laying the diagram out …
        <button type="button" className="key" onClick={() => layingOut.stop()}>
          Stop
        </button>
      </p>
    );
  if (laying === 'stopped' || laying === 'failed')
    return (
      <p className={styles.notice} role={laying === 'failed' ? 'alert' : 'status'}>
        {laying === 'failed' ? `The diagram could not be laid out: ${trouble}` : 'Laying out was stopped.'}
        <button type="button" className="key" onClick={() => layingOut.again()}>
          Lay out again
        </button>
      </p>
    );
  return null;
}
