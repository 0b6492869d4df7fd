import { memo } from 'react';
import styles from './entrant-strip.module.css';

const HEIGHT = 14;

/** A full bar where it enters, half a bar where it is tight, a stub where it is blocked; nothing where unknown. */
const BARS = [
  { letter: 'e', verdict: 'enters', tall: 13 },
  { letter: 't', verdict: 'tight', tall: 7 },
  { letter: 'b', verdict: 'blocked', tall: 2 },
] as const;

/** One blank's answers along the block as a comb, in the order of the wall; `comb` has a letter for each keyway. */
export const EntrantStrip = memo(function EntrantStrip({ comb, width }: { comb: string; width: number }) {
  const pitch = Math.min(10, width / Math.max(1, comb.length));
  const used = Math.ceil(pitch * comb.length);
  return (
    <svg className={styles.strip} width={used} height={HEIGHT} aria-hidden="true">
      {BARS.map(({ letter, verdict, tall }) => (
        <path key={letter} data-verdict={verdict} d={barsPath(comb, letter, pitch, tall)} />
      ))}
    </svg>
  );
});

/** All bars of one kind as one path. */
function barsPath(comb: string, letter: string, pitch: number, tall: number): string {
  const bar = Math.max(1, pitch * 0.62).toFixed(2);
  return [...comb]
    .map((at, i) => (at === letter ? `M${(i * pitch).toFixed(2)} ${HEIGHT}v${-tall}h${bar}v${tall}Z` : ''))
    .join('');
}
