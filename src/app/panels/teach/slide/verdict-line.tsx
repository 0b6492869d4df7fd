import { readingText } from '../../../../family/length-text.ts';
import { MEASURING, marginText, VERDICT_WORDS } from '../../../../family/margin-text.ts';
import type { Fit } from '../../../../fit/fit.ts';
import { useSession, useStore } from '../../use-store.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import styles from './slide.module.css';

/** The answer for a room: mark, word, margin. */
export function VerdictLine({ fit, size, hidden = false }: { fit: Fit; size: number; hidden?: boolean }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  return (
    <p className={styles.verdict} data-verdict={fit.verdict} data-hidden={hidden}>
      <span className={styles.word}>
        <VerdictMark verdict={fit.verdict} size={size} />
        {VERDICT_WORDS[fit.verdict]}
      </span>{' '}
      <span className={styles.margin}>{marginText(fit, units, MEASURING, readingText)}</span>
    </p>
  );
}
