import { type KeyboardEvent, useCallback, useRef } from 'react';
import type { NameRow } from '../../../state/names/name-rows.ts';
import { NAME_COLUMNS, type NameColumn, type RegisterLook } from '../../../state/names/names-state.ts';
import { rowAfter } from '../../rows/row-after.ts';
import { useFollowedRow } from '../../rows/use-followed-row.ts';
import { useWindowOfRows } from '../../rows/use-window-of-rows.ts';
import { useSession } from '../../use-store.ts';
import { RegisterRow } from './register-row.tsx';
import styles from './register-table.module.css';

/** Heights of a row and of the head, pixels; the style sheet has them too. */
const SIZES = { row: 46, head: 40 };

const LABELS: Readonly<Record<NameColumn, string>> = {
  text: 'Name',
  kind: 'Kind',
  stands: 'Stands for',
  scheme: 'Scheme',
  chambers: 'Chambers',
  supersededBy: 'Superseded by',
  source: 'From',
};

interface RegisterTableProps {
  readonly rows: readonly NameRow[];
  readonly look: RegisterLook;
  /** Enter, F2 or a double click on a row. */
  onEdit(row: NameRow): void;
  /** Delete on a row. */
  onDelete(row: NameRow): void;
}

/** The names as a table of which only the rows in sight are drawn; its keys walk the rows, edit and delete. */
export function RegisterTable({ rows, look, onEdit, onDelete }: RegisterTableProps) {
  const { names } = useSession();
  const frame = useRef<HTMLDivElement>(null);
  const at = rows.findIndex(({ key }) => key === look.chosen);
  const { shown, total, reveal } = useWindowOfRows({
    count: rows.length,
    size: SIZES.row,
    frame,
    kept: at,
    before: SIZES.head,
    after: 0,
  });
  const choose = useCallback((key: string) => names.setState((s) => ({ look: { ...s.look, chosen: key } })), [names]);
  useFollowedRow(frame, at, look.chosen, reveal);
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const onRow = event.target instanceof Element && event.target.closest('[data-name-row]') !== null;
    if (!onRow) return;
    const row = rows[at];
    const next = rows[rowAfter(event.key, at, rows.length, SIZES, frame.current?.clientHeight ?? 0) ?? -1];
    if (next) choose(next.key);
    else if (row && (event.key === 'Enter' || event.key === 'F2')) onEdit(row);
    else if (row && event.key === 'Delete') onDelete(row);
    else return;
    event.preventDefault();
  };
  return (
    <div ref={frame} className={styles.frame}>
      <table
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose rows are walked and edited is a grid
        role="grid"
        aria-label="Names"
        aria-rowcount={rows.length + 1}
        className={styles.grid}
        style={{ height: total }}
        onKeyDown={onKeyDown}
      >
        <RegisterHead look={look} />
        <tbody>
          {shown.map(({ index, start }) => {
            const row = rows[index];
            if (!row) return null;
            return (
              <RegisterRow
                key={row.key}
                row={row}
                place={index}
                top={start}
                chosen={index === at}
                reachable={index === Math.max(at, 0)}
                onChoose={choose}
                onEdit={onEdit}
              />
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

/** The headings; a press on one sorts by it, another turns the order round, a third takes it back. */
function RegisterHead({ look: { sort } }: { look: RegisterLook }) {
  const { names } = useSession();
  const sortBy = (column: NameColumn) =>
    names.setState((s) => ({ look: { ...s.look, sort: nextSort(s.look.sort, column) } }));
  return (
    <thead className={styles.head}>
      <tr className={styles.cells}>
        {NAME_COLUMNS.map((column) => (
          <th key={column} scope="col" aria-sort={sortWord(sort, column)}>
            <button type="button" title={`Sort by ${LABELS[column].toLowerCase()}`} onClick={() => sortBy(column)}>
              {LABELS[column]}
              <span aria-hidden="true" className={styles.arrow}>
                {ARROWS[sortWord(sort, column)]}
              </span>
            </button>
          </th>
        ))}
      </tr>
    </thead>
  );
}

const ARROWS = { ascending: '▲', descending: '▼', none: '' } as const;

function nextSort(sort: RegisterLook['sort'], column: NameColumn): RegisterLook['sort'] {
  if (sort?.column !== column) return { column, falling: false };
  return sort.falling ? null : { column, falling: true };
}

function sortWord(sort: RegisterLook['sort'], column: NameColumn): 'ascending' | 'descending' | 'none' {
  if (sort?.column !== column) return 'none';
  return sort.falling ? 'descending' : 'ascending';
}
