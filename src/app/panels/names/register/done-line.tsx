import { stepBack } from '../../../state/step-history.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './done-line.module.css';

/** What was done to names last, with a key that takes it back; gone once anything else was done. */
export function DoneLine() {
  const session = useSession();
  const { names, documents } = session;
  const done = useStore(names, (s) => s.done);
  const isLast = useStore(documents, (s) => s.document === done?.document);
  return (
    <div role="status" className={styles.line}>
      {done && isLast && (
        <>
          <span>{done.words}</span>
          <button type="button" className="key" title="Take it back (Ctrl+Z)" onClick={() => stepBack(session)}>
            Undo
          </button>
        </>
      )}
    </div>
  );
}
