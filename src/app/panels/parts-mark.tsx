import type { ThreeWay } from '../../fit/judge-tolerance.ts';
import { MarkFrame } from './mark-frame.tsx';
import styles from './verdict-mark.module.css';

/** Each answer for all parts in the colour of the verdict that it is kin to. */
const COLOURS = { always: 'enters', depends: 'tight', never: 'blocked' } as const;

/**
 * The mark of the answer for all parts as made. Silhouettes other than those of a single verdict, and apart from each
 * other in grey: a full disk with a tick, a triangle half filled, a heavy saltire. Always drawn beside its words.
 */
export function PartsMark({ answer, size }: { answer: ThreeWay; size: number }) {
  return (
    <MarkFrame verdict={COLOURS[answer]} parts={answer} size={size}>
      {answer === 'always' && (
        <>
          <circle className={styles.solid} cx="12" cy="12" r="11.4" />
          <path className={styles.cut} d="M6.4 12.6l3.9 4.1 7.4-8.7" />
        </>
      )}
      {answer === 'depends' && (
        <>
          <path className={styles.line} d="M12 2.2L22.6 21.4H1.4Z" />
          <path className={styles.solid} d="M12 2.2V21.4H1.4Z" />
        </>
      )}
      {answer === 'never' && <path className={styles.heavy} d="M3.6 3.6L20.4 20.4M20.4 3.6L3.6 20.4" />}
    </MarkFrame>
  );
}
