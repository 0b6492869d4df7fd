// biome-ignore-all lint/a11y/useSemanticElements: rows and cells are placed one by one, out of a table's flow, and most are not there
import type { CSSProperties } from 'react';
import { VERDICT_WORDS } from '../../../../family/margin-text.ts';
import type { Verdict } from '../../../../fit/fit.ts';
import { LEAN_DEG } from '../../../state/tiers/matrix-measures.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import styles from './matrix.module.css';
import type { RowSetting } from './matrix-row.tsx';

const MARKS: readonly Verdict[] = ['enters', 'tight', 'blocked'];

const MARGIN_WORDS = { mm: '− too deep, mm', in: '− too deep, thou' } as const;

interface MatrixHeadProps {
  readonly setting: RowSetting;
  readonly pickedId: string | null;
  /** The head that the keys start from, -1 for the corner; null where it is none of them. */
  readonly active: number | null;
}

/** The names of the keyways along the top, and the legend in the corner. */
export function MatrixHead({ setting, pickedId, active }: MatrixHeadProps) {
  const { columns, shown, measures, width, units } = setting;
  const { headHeight, nameWidth, cellWidth, aslant } = measures;
  return (
    // biome-ignore lint/a11y/useFocusableInteractive: its cells have the focus, as the grid pattern asks
    <div role="row" className={styles.head} aria-rowindex={1} data-row={-1} style={{ height: headHeight, width }}>
      <div
        role="columnheader"
        className={styles.corner}
        aria-colindex={1}
        data-column={-1}
        data-active={active === -1 || undefined}
        tabIndex={active === -1 ? 0 : -1}
        style={{ width: nameWidth }}
      >
        <Legend margins={measures.margins ? MARGIN_WORDS[units] : ''} />
        <span className={styles.goesInto}>goes into</span>
      </div>
      {shown.map(({ index, start }) => {
        const { profile, label } = columns[index];
        return (
          <div
            key={index}
            role="columnheader"
            className={styles.columnHead}
            aria-colindex={index + 2}
            aria-label={profile.name}
            data-aslant={aslant}
            data-column={index}
            data-picked={profile.id === pickedId}
            data-active={active === index || undefined}
            tabIndex={active === index ? 0 : -1}
            style={{ left: start, width: cellWidth, '--lean': `${-LEAN_DEG}deg` } as CSSProperties}
            title={profile.name}
          >
            <span className={styles.columnName}>{label}</span>
          </div>
        );
      })}
    </div>
  );
}

/** The three silhouettes with their words. */
function Legend({ margins }: { margins: string }) {
  return (
    <span className={styles.legend}>
      {margins && <span>{margins}</span>}
      {MARKS.map((verdict) => (
        <span key={verdict} className={styles.legendLine}>
          <VerdictMark verdict={verdict} size={18} />
          {VERDICT_WORDS[verdict]}
        </span>
      ))}
    </span>
  );
}
