// biome-ignore-all lint/a11y/useSemanticElements: rows and cells are placed one by one, out of a table's flow, and most are not there
import { memo } from 'react';
import type { Fit } from '../../../fit/fit.ts';
import type { Profile } from '../../../profile/profile.ts';
import { cellAnswer } from '../../state/cell-answer.ts';
import { combOf } from '../../state/fits-lookup.ts';
import type { Units } from '../../state/length-text.ts';
import { cellMargin, type MatrixMeasures } from '../../state/tiers/matrix-measures.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import styles from './matrix.module.css';
import type { MatrixColumn } from './use-matrix.ts';
import type { ShownRow } from './use-window-of-rows.ts';

/** What all rows of a matrix share. */
export interface RowSetting {
  readonly columns: readonly MatrixColumn[];
  readonly shown: readonly ShownRow[];
  readonly measures: MatrixMeasures;
  readonly width: number;
  readonly units: Units;
  readonly halted: boolean;
}

interface MatrixRowProps {
  readonly setting: RowSetting;
  readonly row: number;
  readonly top: number;
  readonly entrant: Profile;
  readonly fits: readonly (Fit | undefined)[] | undefined;
  readonly wornAway: boolean;
  readonly picked: boolean;
  /** The cell that the keys start from, -1 for the row's head; null where it is in another row. */
  readonly active: number | null;
}

/** One blank or tool in all keyways that are in sight. Drawn again only when what it says changes. */
export const MatrixRow = memo(function MatrixRow(props: MatrixRowProps) {
  const { setting, row, top, entrant, fits, wornAway, picked, active } = props;
  const { columns, shown, measures, width } = setting;
  const { cellHeight, nameWidth } = measures;
  return (
    // biome-ignore lint/a11y/useFocusableInteractive: its cells have the focus, as the grid pattern asks
    <div
      role="row"
      className={styles.row}
      aria-rowindex={row + 2}
      data-row={row}
      style={{ top, height: cellHeight, width }}
    >
      <div
        role="rowheader"
        className={styles.rowHead}
        aria-colindex={1}
        data-picked={picked}
        data-column={-1}
        data-active={active === -1 || undefined}
        tabIndex={active === -1 ? 0 : -1}
        style={{ width: nameWidth }}
        title={entrant.name}
      >
        <span className={styles.rowName}>{entrant.name}</span>
        <Count fits={fits} />
      </div>
      {shown.map(({ index, start }) => (
        <MatrixCell
          key={index}
          setting={setting}
          column={index}
          start={start}
          entrant={entrant}
          fit={fits?.[columns[index].at]}
          wornAway={wornAway}
          picked={picked}
          active={active === index}
        />
      ))}
    </div>
  );
});

/** How many keyways the row goes into. */
function Count({ fits }: { fits: readonly (Fit | undefined)[] | undefined }) {
  const comb = fits ? combOf(fits) : '';
  const whole = comb.length > 0 && !comb.includes('.');
  const count = [...comb].filter((letter) => letter === 'e' || letter === 't').length;
  return (
    <span className={styles.count}>
      {whole ? count : '–'}
      <span className="unseen"> of {comb.length} keyways</span>
    </span>
  );
}

/** Full squares are drawn smaller than open rings, so that among many the few that go in stand out. */
const LIGHTER = 0.72;

interface MatrixCellProps {
  readonly setting: RowSetting;
  readonly column: number;
  readonly start: number;
  readonly entrant: Profile;
  readonly fit: Fit | undefined;
  readonly wornAway: boolean;
  readonly picked: boolean;
  readonly active: boolean;
}

function MatrixCell({ setting, column, start, entrant, fit, wornAway, picked, active }: MatrixCellProps) {
  const { measures, columns, units, halted } = setting;
  const nothing = { threeWay: undefined, wear: undefined };
  const { mark, phrase } = cellAnswer('margin', { fit, wornAway, halted, ...nothing }, units);
  return (
    <div
      role="gridcell"
      className={styles.cell}
      aria-colindex={column + 2}
      aria-label={`${entrant.name} in ${columns[column].profile.name}: ${phrase}`}
      aria-selected={picked && active}
      data-column={column}
      data-active={active || undefined}
      tabIndex={active ? 0 : -1}
      style={{ left: start, width: measures.cellWidth }}
    >
      <VerdictMark
        verdict={mark === 'enters' || mark === 'tight' || mark === 'blocked' ? mark : null}
        size={mark === 'blocked' ? Math.round(measures.mark * LIGHTER) : measures.mark}
      />
      {measures.margins && fit && <span className={styles.margin}>{cellMargin(fit, units)}</span>}
    </div>
  );
}
