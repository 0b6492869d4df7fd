import { type KeepStatus, keepOf } from '../../keep/keep-state.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './keep-status.module.css';

const KEPT = 'kept';
const NOT_KEPT = 'not kept';

const WORDS: Readonly<Record<KeepStatus, string>> = {
  off: NOT_KEPT,
  untouched: '',
  writing: KEPT,
  kept: KEPT,
  full: NOT_KEPT,
  failed: NOT_KEPT,
  elsewhere: NOT_KEPT,
  taken: NOT_KEPT,
};

/** Whether the open family is kept, quietly; the notices say why not. */
export function KeepStatusWords() {
  const session = useSession();
  const { status, dropped } = useStore(keepOf(session), (s) => s);
  const words = WORDS[status];
  if (words === '') return null;
  const steps = dropped > 0 ? ` The oldest ${dropped} steps of undo are too many to keep.` : '';
  const title =
    words === KEPT
      ? `Every change is kept as you make it, with its undo; it survives a reload and a crash.${steps}`
      : 'Changes are not kept when this window closes: save the family as a file.';
  return (
    <small className={styles.words} data-kept={status} title={title}>
      {words === NOT_KEPT && <span aria-hidden="true">▲ </span>}
      {words}
      {words === KEPT && <span className={styles.where}> in this browser</span>}
    </small>
  );
}
