import type { ShownTick } from '../../../state/plan/access/access-rows.ts';
import styles from './tick-mark.module.css';

/** What a cell of holders and areas shows: a full disc must be entered, a ring is free, a half disc is some, a dot is not. */
export function TickMark({ tick }: { tick: ShownTick }) {
  return (
    <svg className={styles.mark} viewBox="-10 -10 20 20" aria-hidden="true" focusable="false">
      {tick === 1 && <path className={styles.must} d="M0-8a8 8 0 1 1 0 16a8 8 0 1 1 0-16z" />}
      {tick === 1 && <path className={styles.tick} d="M-4 .3L-1.2 3.2L4.2-3.4" />}
      {tick === 2 && <path className={styles.free} d="M0-6.6a6.6 6.6 0 1 1 0 13.2a6.6 6.6 0 1 1 0-13.2z" />}
      {tick === 'some' && <path className={styles.rim} d="M0-6.6a6.6 6.6 0 1 1 0 13.2a6.6 6.6 0 1 1 0-13.2z" />}
      {tick === 'some' && <path className={styles.must} d="M0-6.6a6.6 6.6 0 0 0 0 13.2z" />}
      {tick === 0 && <path className={styles.not} d="M0-1.5a1.5 1.5 0 1 1 0 3a1.5 1.5 0 1 1 0-3z" />}
    </svg>
  );
}
