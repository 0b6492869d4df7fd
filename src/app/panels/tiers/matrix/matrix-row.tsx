// biome-ignore-all lint/a11y/useSemanticElements: rows and cells are placed one by one, out of a table's flow, and most are not there
import { memo } from 'react';
import type { Units } from '../../../../family/length-text.ts';
import type { Fit } from '../../../../fit/fit.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { cellAnswer } from '../../../state/cell-answer.ts';
import { combOf } from '../../../state/fits-lookup.ts';
import { type ClaimMarkOfPair, claimMarkKey } from '../../../state/tiers/claims-marks.ts';
import { cellMargin, type MatrixMeasures } from '../../../state/tiers/matrix-measures.ts';
import type { ShownRow } from '../../rows/use-window-of-rows.ts';
import { ClaimMark } from '../claims/claim-mark.tsx';
import styles from './matrix.module.css';
import type { MatrixColumn } from './use-matrix.ts';

/** What all rows of a matrix share. */
export interface RowSetting {
  readonly columns: readonly MatrixColumn[];
  readonly shown: readonly ShownRow[];
  readonly measures: MatrixMeasures;
  readonly width: number;
  readonly units: Units;
  readonly halted: boolean;
  /** What is claimed of pairs, by {@link claimMarkKey}; empty where claims are not shown. */
  readonly claims: ReadonlyMap<string, ClaimMarkOfPair>;
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
  const { columns, shown, measures, width, units, halted, claims } = setting;
  const { cellHeight, cellWidth, nameWidth } = measures;
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
      {shown.map(({ index, start }, nth) => (
        <MatrixCell
          key={index}
          column={index}
          before={start - (nth === 0 ? nameWidth : shown[nth - 1].start + cellWidth)}
          entrantName={entrant.name}
          openingName={columns[index].profile.name}
          measures={measures}
          units={units}
          halted={halted}
          fit={fits?.[columns[index].at]}
          wornAway={wornAway}
          claim={failing(claims.get(claimMarkKey(entrant.id, columns[index].profile.id)))}
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

type FailingStanding = 'contradicted' | 'too close to call';

const CLAIM_WORDS: Readonly<Record<FailingStanding, string>> = {
  contradicted: 'a claim says otherwise',
  'too close to call': 'a claim is too close to call',
};

/** Only claims that fail are marked. */
function failing(claim: ClaimMarkOfPair | undefined): FailingStanding | null {
  const standing = claim?.standing;
  return standing === 'contradicted' || standing === 'too close to call' ? standing : null;
}

interface MatrixCellProps {
  readonly column: number;
  /** Room to the cell before it, pixels: cells stand in a row, so that none need be placed. */
  readonly before: number;
  readonly entrantName: string;
  readonly openingName: string;
  readonly measures: MatrixMeasures;
  readonly units: Units;
  readonly halted: boolean;
  readonly fit: Fit | undefined;
  readonly wornAway: boolean;
  /** How a claim that fails stands; null for none. */
  readonly claim: FailingStanding | null;
  readonly picked: boolean;
  readonly active: boolean;
}

/** One pair: its mark, and where there is room its margin. */
const MatrixCell = memo(function MatrixCell(props: MatrixCellProps) {
  const { column, before, entrantName, openingName, measures, units, halted, fit, wornAway, claim, picked, active } =
    props;
  const nothing = { threeWay: undefined, wear: undefined };
  const { mark, phrase } = cellAnswer('margin', { fit, wornAway, halted, ...nothing }, units);
  return (
    <div
      role="gridcell"
      className={styles.cell}
      aria-colindex={column + 2}
      aria-label={`${entrantName} in ${openingName}: ${phrase}${claim ? `; ${CLAIM_WORDS[claim]}` : ''}`}
      aria-selected={picked && active}
      data-column={column}
      data-verdict={mark ?? 'unknown'}
      data-margin={measures.margins && fit ? cellMargin(fit, units) : undefined}
      data-claim={claim ?? undefined}
      data-active={active || undefined}
      tabIndex={active ? 0 : -1}
      style={{ marginLeft: before, width: measures.cellWidth }}
    >
      {claim && (
        <span className={styles.claim}>
          <ClaimMark standing={claim} size={measures.size === 'small' ? 13 : 16} />
        </span>
      )}
    </div>
  );
});
