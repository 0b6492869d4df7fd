import { type KeyboardEvent, type MouseEvent, memo, useEffect, useMemo, useRef, useState } from 'react';
import type { Units } from '../../../family/length-text.ts';
import { VERDICT_WORDS } from '../../../family/margin-text.ts';
import type { ToolCell } from '../../../gauge/tool-table.ts';
import type { Profile } from '../../../profile/profile.ts';
import { spareNumber, thicknessText } from '../../state/gauge/gauge-lengths.ts';
import type { ToolOrder } from '../../state/gauge/gauge-state.ts';
import { shortName } from '../../state/gauge/gauge-words.ts';
import { pressedOrder, type ShownTool } from '../../state/gauge/tool-rows.ts';
import { useWindowOfRows } from '../rows/use-window-of-rows.ts';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import styles from './tools-table.module.css';
import { placeAfter, type TablePlace } from './tools-table-keys.ts';

/** Height of a row and of the head, pixels; the style sheet has them too. */
const ROW = 56;
const HEAD = 66;

interface ToolsTableProps {
  readonly rows: readonly ShownTool[];
  readonly openings: readonly Profile[];
  readonly ticked: ReadonlySet<string>;
  readonly order: ToolOrder;
  onTick(openingId: string): void;
}

/**
 * Tools x keyways. Arrows walk the cells and pick what they stand for; in the head Space ticks a keyway and Enter sorts
 * by it. Only the rows in sight are on the page.
 */
export function ToolsTable({ rows, openings, ticked, order, onTick }: ToolsTableProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const frame = useRef<HTMLDivElement>(null);
  const place = usePlace(rows, openings);
  const { shown, total, reveal } = useWindowOfRows({
    ...{ count: rows.length, size: ROW, frame, kept: place.row, before: HEAD, after: 4 },
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: the row is looked up once it is another one
  useEffect(() => {
    if (place.row >= 0) reveal(place.row);
    frame.current?.querySelector('[data-active]')?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [place.row, place.column]);
  const hands = useTableHands({ rows, openings, order, place, onTick });
  const minWidth = `calc(var(--names) + ${openings.length} * var(--cell))`;
  return (
    <div className={styles.whole}>
      <Legend units={units} />
      <div ref={frame} className={styles.frame}>
        <table
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the keys go along its cells, as the grid pattern asks
          role="grid"
          aria-label="Tools in keyways"
          aria-rowcount={rows.length + 1}
          aria-colcount={openings.length + 1}
          aria-activedescendant={cellId(place.row, place.column)}
          aria-describedby="tools-table-keys"
          tabIndex={0}
          className={styles.grid}
          style={{ minWidth }}
          {...hands}
        >
          <Head openings={openings} ticked={ticked} order={order} active={place.row < 0 ? place.column : -1} />
          <tbody className={styles.rows} style={{ height: total - HEAD }}>
            {shown.map(({ index, start }) => {
              const row = rows[index];
              return (
                row && (
                  <Row
                    key={row.tool.id}
                    row={row}
                    index={index}
                    top={start - HEAD}
                    units={units}
                    active={index === place.row ? place.column : -1}
                    openings={openings}
                  />
                )
              );
            })}
          </tbody>
        </table>
        <KeysNote />
      </div>
    </div>
  );
}

interface TableHandsAsked extends Pick<ToolsTableProps, 'rows' | 'openings' | 'order' | 'onTick'> {
  readonly place: TablePlace & { set(to: TablePlace): void };
}

/** What keys and the pointer do to the table. */
function useTableHands({ rows, openings, order, place, onTick }: TableHandsAsked) {
  const { selection, gauge } = useSession();
  const sort = (column: number) => {
    const openingId = openings[column - 1]?.id;
    const wanted: ToolOrder =
      openingId === undefined ? { by: 'name', down: false } : { by: 'opening', openingId, down: true };
    gauge.setState({ order: pressedOrder(order, wanted) });
  };
  const go = (to: TablePlace) => {
    place.set(to);
    const entrantId = rows[to.row]?.tool.id;
    const openingId = openings[to.column - 1]?.id;
    selection.setState({
      ...(entrantId !== undefined && { entrantId, part: 'entrant' as const }),
      ...(openingId !== undefined && { openingId }),
    });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const next = placeAfter(place, event.key, rows.length, openings.length);
    const inHead = place.row < 0;
    if (next) go(next);
    else if (inHead && event.key === ' ' && place.column > 0) onTick(openings[place.column - 1].id);
    else if (inHead && event.key === 'Enter') sort(place.column);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const onClick = (event: MouseEvent) => {
    const cell = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-column]') : null;
    if (!cell) return;
    const column = Number(cell.dataset.column);
    const row = Number(cell.dataset.row);
    go({ row, column });
    if (row >= 0) return;
    if (event.target instanceof Element && event.target.closest('[data-tick]')) onTick(openings[column - 1].id);
    else sort(column);
  };
  return { onKeyDown, onClick };
}

function KeysNote() {
  return (
    <p id="tools-table-keys" className="unseen">
      Arrow keys walk the cells. In the head, Space ticks a keyway to be covered and Enter sorts by it.
    </p>
  );
}

/** The marks with their words, and what the figures are. */
function Legend({ units }: { units: Units }) {
  return (
    <ul className={styles.legend}>
      {(['enters', 'tight', 'blocked'] as const).map((verdict) => (
        <li key={verdict}>
          <VerdictMark verdict={verdict} size={16} />
          {VERDICT_WORDS[verdict]}
        </li>
      ))}
      <li>figures: spare thickness of straight tools, {units === 'in' ? 'thousandths of an inch' : 'mm'}</li>
    </ul>
  );
}

const cellId = (row: number, column: number) => `tools-${row}-${column}`;

/** The place in the table: what is picked, and whether the head or the names are walked. */
function usePlace(rows: readonly ShownTool[], openings: readonly Profile[]) {
  const { selection } = useSession();
  const entrantId = useStore(selection, (s) => s.entrantId);
  const openingId = useStore(selection, (s) => s.openingId);
  const [edge, setEdge] = useState({ head: false, names: false });
  return useMemo(() => {
    const at = rows.findIndex(({ tool }) => tool.id === entrantId);
    const row = edge.head ? -1 : Math.max(at, 0);
    const column = edge.names
      ? 0
      : 1 +
        Math.max(
          0,
          openings.findIndex(({ id }) => id === openingId),
        );
    const set = (to: TablePlace) => setEdge({ head: to.row < 0, names: to.column === 0 });
    return { row: rows.length === 0 ? -1 : row, column: openings.length === 0 ? 0 : column, set };
  }, [rows, openings, entrantId, openingId, edge]);
}

interface HeadProps {
  readonly openings: readonly Profile[];
  readonly ticked: ReadonlySet<string>;
  readonly order: ToolOrder;
  readonly active: number;
}

function Head({ openings, ticked, order, active }: HeadProps) {
  return (
    <thead>
      <tr aria-rowindex={1} className={`${styles.row} ${styles.head}`}>
        <th
          id={cellId(-1, 0)}
          scope="col"
          className={styles.name}
          aria-sort={order.by === 'name' ? sortWord(order) : undefined}
          data-row={-1}
          data-column={0}
          data-active={active === 0 || undefined}
        >
          Tool <SortMark shown={order.by === 'name'} down={order.down} />
        </th>
        {openings.map((opening, i) => {
          const sorted = order.by === 'opening' && order.openingId === opening.id;
          const isTicked = ticked.has(opening.id);
          return (
            <th
              key={opening.id}
              id={cellId(-1, i + 1)}
              scope="col"
              className={styles.cell}
              aria-sort={sorted ? sortWord(order) : undefined}
              aria-label={`${opening.name}, ${isTicked ? 'to be covered' : 'not to be covered'}`}
              title={opening.name}
              data-row={-1}
              data-column={i + 1}
              data-active={active === i + 1 || undefined}
            >
              <span className={styles.headName}>
                {shortName(opening)} <SortMark shown={sorted} down={order.down} />
              </span>
              <span className={styles.tick} data-tick data-ticked={isTicked}>
                <TickBox ticked={isTicked} />
              </span>
            </th>
          );
        })}
      </tr>
    </thead>
  );
}

function sortWord({ down }: ToolOrder): 'ascending' | 'descending' {
  return down ? 'descending' : 'ascending';
}

function SortMark({ shown, down }: { shown: boolean; down: boolean }) {
  return shown ? <span aria-hidden="true">{down ? '▾' : '▴'}</span> : null;
}

function TickBox({ ticked }: { ticked: boolean }) {
  return (
    <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
      <rect x="1.5" y="1.5" width="17" height="17" />
      {ticked && <path d="M4.5 10.5l4 4 7-9" />}
    </svg>
  );
}

interface RowProps {
  readonly row: ShownTool;
  readonly index: number;
  readonly top: number;
  readonly units: Units;
  readonly active: number;
  readonly openings: readonly Profile[];
}

const Row = memo(function Row({ row, index, top, units, active, openings }: RowProps) {
  const { tool, straight, size, cells, enters } = row;
  return (
    <tr
      aria-rowindex={index + 2}
      aria-selected={active >= 0}
      className={styles.row}
      style={{ top }}
      data-tool-row={tool.id}
    >
      <th
        id={cellId(index, 0)}
        scope="row"
        className={styles.name}
        title={tool.name}
        data-row={index}
        data-column={0}
        data-active={active === 0 || undefined}
      >
        <span className={styles.text}>{tool.name}</span>
        <span className={styles.below}>
          <span className={styles.size}>{straight ? thicknessText(size.thickness, units) : 'shaped'}, </span>
          {cells.length > 0 ? `enters ${enters} of ${openings.length}` : 'not tried yet'}
        </span>
      </th>
      {openings.map((opening, i) => (
        <td
          key={opening.id}
          id={cellId(index, i + 1)}
          className={styles.cell}
          aria-label={cellWords(row, cells[i] ?? null, opening, units)}
          data-row={index}
          data-column={i + 1}
          data-active={active === i + 1 || undefined}
          data-verdict={cells[i]?.verdict ?? 'unknown'}
        >
          <CellFace cell={cells[i] ?? null} units={units} />
        </td>
      ))}
    </tr>
  );
});

function CellFace({ cell, units }: { cell: ToolCell | null; units: Units }) {
  return (
    <>
      <VerdictMark verdict={cell?.verdict ?? null} size={18} />
      <span>{cell ? cellFigure(cell, units) : '…'}</span>
    </>
  );
}

function cellFigure({ spare, verdict }: ToolCell, units: Units): string {
  return spare === null ? VERDICT_WORDS[verdict] : spareNumber(spare, units);
}

function cellWords({ tool }: ShownTool, cell: ToolCell | null, opening: Profile, units: Units): string {
  if (!cell) return `${tool.name} in ${opening.name}: not known yet`;
  const figure =
    cell.spare === null ? '' : `, spare ${spareNumber(cell.spare, units)} ${units === 'in' ? 'thou' : 'mm'}`;
  return `${tool.name} in ${opening.name}: ${VERDICT_WORDS[cell.verdict]}${figure}`;
}
