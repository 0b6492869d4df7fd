import type { ReactNode } from 'react';
import styles from './verdict-mark.module.css';

interface MarkFrameProps {
  /** The verdict whose colour it has. */
  readonly verdict: string;
  /** The answer for all parts, where it is the mark of one. */
  readonly parts?: string;
  readonly size: number;
  readonly children: ReactNode;
}

/** The square that every mark is drawn in; a mark stands beside its word, so it has no name of its own. */
export function MarkFrame({ verdict, parts, size, children }: MarkFrameProps) {
  return (
    <svg
      className={styles.mark}
      data-verdict={verdict}
      data-parts={parts}
      width={size}
      height={size}
      viewBox="0 0 24 24"
      aria-hidden="true"
    >
      {children}
    </svg>
  );
}
