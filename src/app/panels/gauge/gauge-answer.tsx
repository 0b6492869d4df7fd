import type { CSSProperties } from 'react';
import styles from './gauge-answer.module.css';

/** The answer of a sheet, as large as lets it stand on two or three lines. */
export function GaugeAnswer({ words }: { words: string }) {
  return (
    <h1 className={styles.answer} style={{ '--letters': words.length } as CSSProperties} aria-live="polite">
      {words}
    </h1>
  );
}
