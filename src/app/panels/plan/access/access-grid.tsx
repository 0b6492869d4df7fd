// biome-ignore-all lint/a11y/useSemanticElements: rows and cells are placed one by one, out of a table's flow, and most are not there
import {
  type CSSProperties,
  type KeyboardEvent,
  type MouseEvent,
  type RefObject,
  useEffect,
  useMemo,
  useRef,
} from 'react';
import type { Plan } from '../../../../family/plan.ts';
import type { Access } from '../../../../plan/access.ts';
import type { AreaTree } from '../../../../plan/area-tree.ts';
import { tick, typeName } from '../../../state/plan/access/access-editing.ts';
import { pressKey } from '../../../state/plan/access/access-keys.ts';
import {
  accessRows,
  type AccessRow as GridRow,
  tickAfter,
  tickShown,
  treeOf,
} from '../../../state/plan/access/access-rows.ts';
import { accessLookOf, goTo } from '../../../state/plan/access/access-state.ts';
import { type MatrixPlace, placeAfter } from '../../../state/tiers/matrix-keys.ts';
import { useWindowOfRows } from '../../rows/use-window-of-rows.ts';
import { useSize } from '../../use-size.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './access-grid.module.css';
import { AccessHead } from './access-head.tsx';
import { AccessRow, type AccessSetting, NewAreaRow } from './access-row.tsx';

/** Sizes in pixels; the style sheet has them too. */
const ROW = 30;
const COLUMN = 36;
const HEAD = { high: 132, low: 108 };

/** Room for the names of holders in a window of this height, pixels. */
function headHeight(height: number): number {
  return height < 320 ? HEAD.low : HEAD.high;
}

/**
 * Room for the names of areas, pixels: a third of the width, and more for long names where the holders leave it. A letter
 * is taken as 7.3 wide.
 */
function nameWidth(width: number, tree: AreaTree, holders: number): number {
  const usual = Math.min(280, Math.max(190, width * 0.34));
  const left = width - Math.max(1, holders) * COLUMN - 16;
  const section = (name: string | undefined) => (name === undefined ? 0 : 7.4 * name.length + 17);
  const wanted = tree.rows.map(({ area, depth }) => 50 + 15.2 * depth + 7.3 * area.name.length + section(area.section));
  return Math.round(Math.max(usual, Math.min(left, Math.max(0, ...wanted))));
}

/** The tree of areas beside the grid of holders and areas; only what is in sight is on the page. */
export function AccessGrid({ plan, access }: { plan: Plan; access: Access }) {
  const [frame, size] = useSize<HTMLDivElement>();
  return (
    <div ref={frame} className={styles.frame}>
      {size && size.width > 0 && <Grid plan={plan} access={access} frame={frame} size={size} />}
    </div>
  );
}

interface GridProps {
  readonly plan: Plan;
  readonly access: Access;
  readonly frame: RefObject<HTMLDivElement | null>;
  readonly size: { readonly width: number; readonly height: number };
}

function Grid({ plan, access, frame, size }: GridProps) {
  const look = accessLookOf(useSession());
  const { holderId, typing } = useStore(look, (s) => s);
  const { rows, place, names, head, rowWindow, columnWindow, setting } = useLayout(plan, access, frame, size);
  const grid = useRef<HTMLDivElement>(null);
  useGrasp(grid, place, rowWindow.reveal, columnWindow.reveal);
  const hands = useHands(setting, rows, place, { ...size, names });
  const measures = {
    width: columnWindow.total,
    height: rowWindow.total,
    '--names': `${names}px`,
    '--head': `${head}px`,
  };
  return (
    <div className={styles.sheet} style={measures as CSSProperties}>
      <div
        ref={grid}
        role="treegrid"
        aria-label="Areas and holders"
        aria-rowcount={rows.length + 1}
        aria-colcount={plan.holders.length + 1}
        className={styles.grid}
        {...hands}
      >
        <AccessHead
          holders={plan.holders}
          shown={setting.shown}
          typing={typing}
          pickedId={holderId}
          atFault={setting.atFault}
          active={place.row < 0 ? place.column : null}
        />
        {rowWindow.shown.map(({ index, start }) => {
          const row = rows[index];
          if (row?.kind === 'new')
            return typing?.what === 'new area' ? (
              <NewAreaRow key="new" top={start} depth={row.depth} {...typing.place} />
            ) : null;
          return row ? (
            <AccessRow
              key={row.key}
              setting={setting}
              at={index}
              top={start}
              row={row.row}
              isFolded={row.isFolded}
              isTyped={typing?.what === 'area' && typing.id === row.key}
              picked={index === place.row}
              active={index === place.row ? place.column : null}
            />
          ) : null;
        })}
      </div>
    </div>
  );
}

/** The rows, which of them and of the columns are on the page, and the place that is picked. */
function useLayout(plan: Plan, access: Access, frame: GridProps['frame'], size: GridProps['size']) {
  const look = accessLookOf(useSession());
  const { areaId, holderId, folded, typing } = useStore(look, (s) => s);
  const { holders } = plan;
  const tree = treeOf(plan);
  const rows = useMemo(() => accessRows(tree, folded, typing), [tree, folded, typing]);
  const names = useMemo(() => nameWidth(size.width, tree, holders.length), [size.width, tree, holders.length]);
  const head = headHeight(size.height);
  const place = {
    row: rows.findIndex(({ key }) => key === areaId),
    column: holders.findIndex(({ id }) => id === holderId),
  };
  const newAt = rows.findIndex(({ kind }) => kind === 'new');
  const kept = newAt >= 0 ? newAt : place.row;
  const rowWindow = useWindowOfRows({ count: rows.length, size: ROW, frame, kept, before: head, after: 8 });
  const columnWindow = useWindowOfRows({
    count: holders.length,
    size: COLUMN,
    frame,
    kept: place.column,
    horizontal: true,
    before: names,
    after: 8,
  });
  const atFault = useMemo(() => idsAtFault(access), [access]);
  const { shown } = columnWindow;
  const setting: AccessSetting = useMemo(() => ({ tree, holders, shown, atFault }), [tree, holders, shown, atFault]);
  return { rows, place, names, head, rowWindow, columnWindow, setting };
}

function idsAtFault({ faults }: Access): ReadonlySet<string> {
  const told = faults.filter(({ kind }) => kind === 'contradiction');
  return new Set(told.flatMap(({ areas, holders }) => [...areas, ...holders]));
}

/** Brings the picked cell into sight and gives it the focus, each time that it is to have it. */
function useGrasp(
  grid: RefObject<HTMLElement | null>,
  place: MatrixPlace,
  revealRow: (row: number) => void,
  revealColumn: (column: number) => void,
): void {
  const look = accessLookOf(useSession());
  const grasp = useStore(look, (s) => s.grasp);
  const before = useRef(0);
  useEffect(() => {
    if (before.current === grasp) return;
    const active = grid.current?.querySelector<HTMLElement>('[data-active]');
    if (!active) return;
    before.current = grasp;
    if (place.row >= 0) revealRow(place.row);
    if (place.column >= 0) revealColumn(place.column);
    active.focus({ preventScroll: true });
  });
}

/** What the grid does with keys and pointer. */
function useHands(
  { tree, holders }: AccessSetting,
  rows: readonly GridRow[],
  place: MatrixPlace,
  size: { readonly width: number; readonly height: number; readonly names: number },
) {
  const session = useSession();
  const go = ({ row, column }: MatrixPlace) => goTo(session, rows[row]?.key ?? null, holders[column]?.id ?? null);
  const page = {
    rows: rows.length,
    columns: holders.length,
    pageRows: Math.max(1, Math.floor((size.height - headHeight(size.height)) / ROW) - 1),
    pageColumns: Math.max(1, Math.floor((size.width - size.names) / COLUMN) - 1),
  };
  return {
    onKeyDown: (event: KeyboardEvent) => {
      const { key, shiftKey: shift, altKey: alt } = event;
      const command = event.ctrlKey || event.metaKey;
      const row = rows[place.row];
      const isFolded = row?.kind === 'area' && row.isFolded;
      const spot = { tree, holders, areaId: row?.key ?? null, holderId: holders[place.column]?.id ?? null, isFolded };
      const isDone = pressKey(session, { key, shift, alt, command }, spot);
      const next = isDone ? null : placeAfter(place, { key, command, alt }, page);
      if (!isDone && !next) return;
      event.preventDefault();
      if (next) go(next);
    },
    onClick: (event: MouseEvent) => {
      const at = placeOf(event.target);
      if (!at) return;
      go(at);
      const holder = holders[at.column];
      const row = rows[at.row];
      if (holder && row?.kind === 'area')
        tick(session, holder.id, row.key, tickAfter(tickShown(tree, holder, row.row)));
    },
    onDoubleClick: (event: MouseEvent) => {
      const at = placeOf(event.target);
      const row = at && rows[at.row];
      const holder = at && holders[at.column];
      if (row && !holder && row.kind === 'area') typeName(session, { what: 'area', id: row.key });
      else if (holder && !row) typeName(session, { what: 'holder', id: holder.id });
    },
  };
}

/** The place that an event happened at; none where a name is typed. */
function placeOf(target: EventTarget): MatrixPlace | null {
  if (!(target instanceof Element) || target.closest('input')) return null;
  const cell = target.closest<HTMLElement>('[data-column]');
  const row = cell?.closest<HTMLElement>('[data-row]');
  return cell && row ? { row: Number(row.dataset.row), column: Number(cell.dataset.column) } : null;
}
