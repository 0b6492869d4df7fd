import { memo } from 'react';
import { cellText, type NameRow } from '../../../state/names/name-rows.ts';
import { NAME_COLUMNS } from '../../../state/names/names-state.ts';
import styles from './register-table.module.css';

interface RegisterRowProps {
  readonly row: NameRow;
  /** Its place among the rows that are shown, from 0. */
  readonly place: number;
  /** Pixels below the top of the table. */
  readonly top: number;
  readonly chosen: boolean;
  /** Whether Tab leads to it. */
  readonly reachable: boolean;
  onChoose(key: string): void;
  onEdit(row: NameRow): void;
}

/** One name with all that the register says of it. */
export const RegisterRow = memo(function RegisterRow(props: RegisterRowProps) {
  const { row, place, top, chosen, reachable, onChoose, onEdit } = props;
  return (
    <tr
      aria-rowindex={place + 2}
      aria-selected={chosen}
      data-name-row=""
      tabIndex={reachable ? 0 : -1}
      className={`${styles.cells} ${styles.row}`}
      data-gone={row.gone}
      style={{ top }}
      onClick={(event) => {
        onChoose(row.key);
        event.currentTarget.focus({ preventScroll: true });
      }}
      onDoubleClick={() => onEdit(row)}
      onFocus={() => onChoose(row.key)}
    >
      {NAME_COLUMNS.map((column) => (
        <td key={column} data-column={column} title={cellText(row, column)}>
          {column === 'stands' && row.gone && <GoneMark />}
          <span className={styles.text}>{cellText(row, column) || <span className={styles.nothing}>–</span>}</span>
        </td>
      ))}
    </tr>
  );
});

/** Says of what stands behind it that the family has it no longer: a broken ring, and the word. */
function GoneMark() {
  return (
    <span className={styles.gone} title="The family has it no longer">
      <svg width="16" height="16" viewBox="0 0 24 24" aria-hidden="true">
        <path d="M12 2a10 10 0 0 1 10 10M12 22A10 10 0 0 1 2 12M7 17L17 7" />
      </svg>
      gone
    </span>
  );
}
