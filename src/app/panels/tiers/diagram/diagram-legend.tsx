import type { Profile } from '../../../../profile/profile.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import styles from './diagram.module.css';

/** What the lines and the marks of the diagram mean. */
export function DiagramLegend({ opening, picked }: { opening: Profile | null; picked: boolean }) {
  return (
    <p className={styles.legend}>
      {picked && (
        <>
          <span className={styles.legendPart}>
            <LineSample relation="above" />
            enters more
          </span>
          <span className={styles.legendPart}>
            <LineSample relation="below" />
            enters less
          </span>
        </>
      )}
      {opening && (
        <span className={styles.legendPart}>
          <VerdictMark verdict="enters" size={16} />
          <VerdictMark verdict="blocked" size={16} />
          in {opening.section ?? opening.name}
        </span>
      )}
    </p>
  );
}

function LineSample({ relation }: { relation: 'above' | 'below' }) {
  return (
    <svg className={styles.lines} width="24" height="10" aria-hidden="true">
      <path data-relation={relation} d="M1 5H23" />
    </svg>
  );
}
