import { memo } from 'react';
import type { Fit } from '../../fit/fit.ts';
import styles from './entrant-strip.module.css';

const HEIGHT = 14;
const BAR_HEIGHT = { enters: 13, tight: 7, blocked: 2 } as const;

/**
 * One blank's answers along the block as a comb: a full bar where it enters, half a bar where it is tight,
 * a stub where it is blocked; the same order as the wall.
 */
export const EntrantStrip = memo(function EntrantStrip({ fits, width }: { fits: readonly Fit[]; width: number }) {
  const pitch = Math.min(10, width / Math.max(1, fits.length));
  const used = Math.ceil(pitch * fits.length);
  const bar = Math.max(1, pitch * 0.62);
  return (
    <svg className={styles.strip} width={used} height={HEIGHT} aria-hidden="true">
      {fits.map((fit, i) => {
        const tall = BAR_HEIGHT[fit.verdict];
        // biome-ignore lint/suspicious/noArrayIndexKey: bars stand for places along the block and never move
        return <rect key={i} data-verdict={fit.verdict} x={i * pitch} y={HEIGHT - tall} width={bar} height={tall} />;
      })}
    </svg>
  );
});
