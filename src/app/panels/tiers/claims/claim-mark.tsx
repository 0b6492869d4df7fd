import type { ClaimStanding } from '../../../../claims/check-claims.ts';
import { MarkFrame } from '../../mark-frame.tsx';
import styles from '../../verdict-mark.module.css';

/** Each standing in the colour of the verdict that it is kin to. */
const COLOURS: Readonly<Record<ClaimStanding, string>> = {
  confirmed: 'enters',
  'too close to call': 'tight',
  contradicted: 'blocked',
  'name not found': 'unknown',
  'name ambiguous': 'unknown',
  'not judged yet': 'unknown',
};

/**
 * The mark of a claim's standing. Silhouettes of their own, apart in grey: a bare tick, a flag with a stroke through it, a
 * disk with two waves, a question mark once or twice, a dashed ring. Always drawn beside its word.
 */
export function ClaimMark({ standing, size }: { standing: ClaimStanding; size: number }) {
  return (
    <MarkFrame verdict={COLOURS[standing]} size={size}>
      {standing === 'confirmed' && <path className={styles.heavy} d="M3.2 12.8l6 6.2L20.6 5.2" />}
      {standing === 'contradicted' && (
        <>
          <path className={styles.solid} d="M7.3 0.8h9.4l6.5 6.5v9.4l-6.5 6.5H7.3L0.8 16.700V7.3Z" />
          <path className={styles.bar} d="M7.2 7.2l9.6 9.600M16.8 7.2L7.2 16.8" />
        </>
      )}
      {standing === 'too close to call' && (
        <>
          <circle className={styles.line} cx="12" cy="12" r="10.2" />
          <path className={styles.line} d="M6 9.600q3-2.8 6 0t6 0M6 15.400q3-2.8 6 0t6 0" />
        </>
      )}
      {standing === 'name not found' && <Question x={12} />}
      {standing === 'name ambiguous' && (
        <>
          <Question x={6.6} />
          <Question x={17.4} />
        </>
      )}
      {standing === 'not judged yet' && <circle className={styles.waiting} cx="12" cy="12" r="9" />}
    </MarkFrame>
  );
}

function Question({ x }: { x: number }) {
  return (
    <g transform={`translate(${x - 12} 0)`}>
      <path className={styles.line} d="M7.6 7.4a4.4 4.4 0 1 1 6.4 4c-1.5.8-2 1.6-2 3.2" />
      <circle className={styles.solid} cx="12" cy="20" r="2" />
    </g>
  );
}
