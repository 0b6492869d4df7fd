import type { TorqueLimits } from '../../../../strength/torque-limits.ts';
import styles from './strength-bar.module.css';

interface StrengthBarProps {
  readonly limits: TorqueLimits;
  readonly torqueNm: number;
  /** Torque at the right end. */
  readonly end: number;
}

/**
 * A bar of torque: full as far as nothing yields, hatched until the whole section does, by the weakest piece of the
 * material; the line across is the torque compared with.
 */
export function StrengthBar({ limits, torqueNm, end }: StrengthBarProps) {
  const at = (nm: number) => `${(100 * Math.min(nm, end)) / end}%`;
  const { yieldNm, plasticNm } = limits;
  return (
    <div className={styles.track} aria-hidden="true">
      <span className={styles.plastic} style={{ width: at(plasticNm.low) }} />
      <span className={styles.elastic} style={{ width: at(yieldNm.low) }} />
      <span className={styles.line} style={{ left: at(torqueNm) }} />
    </div>
  );
}
