import type { Verdict } from '../../fit/fit.ts';
import { MarkFrame } from './mark-frame.tsx';
import styles from './verdict-mark.module.css';

/**
 * The mark of a verdict. Three silhouettes that grow heavier as less goes in, so that they stay apart in
 * grey and at the back of a room: an open ring with a tick, a diamond half filled, a full square with a bar.
 * It is always drawn beside its word, so it has no name of its own.
 */
export function VerdictMark({ verdict, size }: { verdict: Verdict | null; size: number }) {
  return (
    <MarkFrame verdict={verdict ?? 'unknown'} size={size}>
      {verdict === 'enters' && (
        <>
          <circle className={styles.line} cx="12" cy="12" r="10" />
          <path className={styles.line} d="M6.8 12.6l3.6 3.8 6.9-8.2" />
        </>
      )}
      {verdict === 'tight' && (
        <>
          <path className={styles.line} d="M12 1.6L22.4 12 12 22.4 1.6 12Z" />
          <path className={styles.solid} d="M12 1.6L12 22.4 1.6 12Z" />
        </>
      )}
      {verdict === 'blocked' && (
        <>
          <path className={styles.solid} d="M1.5 1.5h21v21h-21Z" />
          <path className={styles.bar} d="M5.5 12h13" />
        </>
      )}
      {verdict === null && <circle className={styles.waiting} cx="12" cy="12" r="9" />}
    </MarkFrame>
  );
}
