// biome-ignore-all lint/a11y/useSemanticElements: rows and cells are placed one by one, out of a table's flow, and most are not there
import {
  type CSSProperties,
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  type RefObject,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
} from 'react';
import type { Family } from '../../../../family/family.ts';
import { isPair } from '../../../state/selection-state.ts';
import type { Session } from '../../../state/session.ts';
import { type MatrixPlace, placeAfter } from '../../../state/tiers/matrix-keys.ts';
import type { MatrixMeasures } from '../../../state/tiers/matrix-measures.ts';
import { pointAt } from '../../../state/tiers/tiers-state.ts';
import { useHalted } from '../../use-family.ts';
import { useSize } from '../../use-size.ts';
import { useSession, useStore } from '../../use-store.ts';
import { useClaimMarks, useClaimsJudging } from '../claims/use-claims.ts';
import { MarkSource, useMarkPictures } from './mark-pictures.tsx';
import styles from './matrix.module.css';
import { MatrixBands } from './matrix-bands.tsx';
import { MatrixHead } from './matrix-head.tsx';
import { MatrixRow, type RowSetting } from './matrix-row.tsx';
import { type MatrixLayout, useMatrix } from './use-matrix.ts';

/**
 * Every blank and tool in every keyway. Only what is in sight is on the page, so that a family may have hundreds of
 * either; the arrow keys walk it, and what they come to is picked.
 */
export function Matrix({ family }: { family: Family }) {
  const [frame, size] = useSize<HTMLDivElement>();
  const { source, pictures } = useMarkPictures();
  return (
    <div ref={frame} className={styles.frame} style={pictures} data-matrix>
      <MarkSource source={source} />
      {size && size.width > 0 && <MatrixGrid family={family} width={size.width} height={size.height} frame={frame} />}
    </div>
  );
}

interface MatrixGridProps {
  readonly family: Family;
  readonly width: number;
  readonly height: number;
  readonly frame: RefObject<HTMLDivElement | null>;
}

function MatrixGrid({ family, width, height, frame }: MatrixGridProps) {
  const { selection, results } = useSession();
  const matrix = useMatrix(family, width, frame);
  const { fits, rows, columns, measures, place, rowWindow } = matrix;
  const entrantId = useStore(selection, (s) => s.entrantId);
  const openingId = useStore(selection, (s) => s.openingId);
  const wornAway = useStore(results, (s) => s.wornAway);
  const setting = useRowSetting(matrix, useShownMarks(family));
  const grid = useRef<HTMLDivElement>(null);
  const hands = useGridHands(matrix, grid, { width, height });
  const rowAt = useMemo(() => new Map(fits?.profiles.map((id, i) => [id, i])), [fits?.profiles]);
  return (
    <div className={styles.sheet} style={{ width: setting.width, height: rowWindow.total, ...measureStyle(measures) }}>
      <MatrixBands matrix={matrix} />
      <div
        ref={grid}
        role="grid"
        aria-label="Matrix: blanks and tools in keyways"
        aria-rowcount={rows.length + 1}
        aria-colcount={columns.length + 1}
        className={styles.grid}
        {...hands}
      >
        <MatrixHead setting={setting} pickedId={openingId} active={place.row < 0 ? place.column : null} />
        {rowWindow.shown
          .filter(({ index }) => index < rows.length)
          .map(({ index, start }) => {
            const entrant = rows[index];
            return (
              <MatrixRow
                key={entrant.id}
                setting={setting}
                row={index}
                top={start}
                entrant={entrant}
                fits={fits?.fits[rowAt.get(entrant.id) ?? -1]}
                wornAway={wornAway.has(entrant.id)}
                picked={entrant.id === entrantId}
                active={index === place.row ? place.column : null}
              />
            );
          })}
      </div>
    </div>
  );
}

/** What the grid does with keys and pointer. */
function useGridHands(
  matrix: MatrixLayout,
  grid: RefObject<HTMLElement | null>,
  frame: { readonly width: number; readonly height: number },
) {
  const session = useSession();
  const { selection, tiers } = session;
  const { rows, columns, measures, place } = matrix;
  const go = useGoing(session, matrix, grid);
  const page = {
    rows: rows.length,
    columns: columns.length,
    pageRows: Math.max(1, Math.floor((frame.height - measures.headHeight) / measures.cellHeight) - 1),
    pageColumns: Math.max(1, Math.floor((frame.width - measures.nameWidth) / measures.cellWidth) - 1),
  };
  const compare = () => {
    if (isPair(selection.getState())) selection.setState({ view: 'compare' });
  };
  const point = (event: { target: EventTarget }) => {
    const at = placeOf(event.target);
    const named = at && { entrantId: rows[at.row]?.id ?? null, openingId: columns[at.column]?.profile.id ?? null };
    pointAt(tiers, named && (named.entrantId !== null || named.openingId !== null) ? named : null);
  };
  const { rest, ...pointer } = usePointerThatMoves(point);
  return {
    onKeyDown: (event: KeyboardEvent) => {
      const command = event.ctrlKey || event.metaKey;
      const next = placeAfter(place, { key: event.key, command, alt: event.altKey }, page);
      if (!next && event.key !== 'Enter') return;
      event.preventDefault();
      if (next) rest();
      if (next) go(next);
      else compare();
    },
    onClick: (event: MouseEvent) => {
      const at = placeOf(event.target);
      if (at) go(at);
    },
    onDoubleClick: (event: MouseEvent) => {
      const at = placeOf(event.target);
      if (at && at.row >= 0 && at.column >= 0) compare();
    },
    ...pointer,
    onPointerLeave: () => pointAt(tiers, null),
    onFocus: point,
    onBlur: () => pointAt(tiers, null),
  };
}

/** Tells of what is under the pointer; after a key that slides cells under one that rests, only once it is moved. */
function usePointerThatMoves(point: (event: PointerEvent) => void) {
  const resting = useRef<{ x: number; y: number } | 'anywhere' | null>(null);
  return {
    rest: () => {
      resting.current = 'anywhere';
    },
    onPointerOver: (event: PointerEvent) => {
      if (!resting.current) point(event);
    },
    onPointerMove: (event: PointerEvent) => {
      const rest = resting.current;
      if (!rest) return;
      const isMoved = rest !== 'anywhere' && Math.hypot(event.clientX - rest.x, event.clientY - rest.y) > 2;
      if (rest === 'anywhere') resting.current = { x: event.clientX, y: event.clientY };
      if (!isMoved) return;
      resting.current = null;
      point(event);
    },
  };
}

/** Sizes that the style sheet reckons with: lines between cells, marks in them. */
function measureStyle({ cellWidth, cellHeight, nameWidth, headHeight, mark }: MatrixMeasures): CSSProperties {
  return {
    '--cell-width': `${cellWidth}px`,
    '--cell-height': `${cellHeight}px`,
    '--name-width': `${nameWidth}px`,
    '--head-height': `${headHeight}px`,
    '--mark-size': `${mark}px`,
  } as CSSProperties;
}

/** What all rows share; the same value until it changes, so that rows are drawn again only then. */
function useRowSetting({ columns, columnWindow, measures }: MatrixLayout, claims: RowSetting['claims']): RowSetting {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const halted = useHalted();
  const { shown: all, total: width } = columnWindow;
  return useMemo(() => {
    const shown = all.filter(({ index }) => index < columns.length);
    return { columns, shown, measures, width, units, halted, claims };
  }, [columns, all, measures, width, units, halted, claims]);
}

const NO_MARKS: RowSetting['claims'] = new Map();

/** What claims the cells mark, with the tolerances judged that it takes. */
function useShownMarks(family: Family): RowSetting['claims'] {
  const { tiers } = useSession();
  useClaimsJudging(family);
  const marks = useClaimMarks(family);
  return useStore(tiers, (s) => s.claimMarks) ? marks : NO_MARKS;
}

/** Goes to a cell: picks what it stands for, brings it into sight and gives it the focus. */
function useGoing({ selection }: Session, matrix: MatrixLayout, grid: RefObject<HTMLElement | null>) {
  const { rows, columns, place, rowWindow, columnWindow, setHead } = matrix;
  const wantsFocus = useRef(false);
  const { row, column } = place;
  const reveal = useRef({ rowWindow, columnWindow });
  useLayoutEffect(() => {
    reveal.current = { rowWindow, columnWindow };
  });
  const { rowOrder, columnOrder } = useStore(useSession().tiers, (s) => s);
  const entrantId = useStore(selection, (s) => s.entrantId);
  const openingId = useStore(selection, (s) => s.openingId);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another pick or order brings it into sight; results that reorder rows leave the sheet where the hand put it
  useEffect(() => {
    if (row >= 0) reveal.current.rowWindow.reveal(row);
    if (column >= 0) reveal.current.columnWindow.reveal(column);
  }, [entrantId, openingId, rowOrder, columnOrder]);
  // In the same commit as the new place: a later effect of the commit before would take the wish for its own.
  useLayoutEffect(() => {
    if (!wantsFocus.current) return;
    wantsFocus.current = false;
    grid.current?.querySelector<HTMLElement>('[data-active]')?.focus({ preventScroll: true });
  });
  return (to: MatrixPlace) => {
    wantsFocus.current = true;
    setHead({ row: to.row < 0, column: to.column < 0 });
    const entrantId = rows[to.row]?.id;
    const openingId = columns[to.column]?.profile.id;
    selection.setState({
      ...(entrantId !== undefined && { entrantId, part: 'entrant' as const }),
      ...(openingId !== undefined && { openingId }),
    });
  };
}

/** The cell that an event happened in. */
function placeOf(target: EventTarget): MatrixPlace | null {
  const cell = target instanceof Element ? target.closest<HTMLElement>('[data-column]') : null;
  const row = cell?.closest<HTMLElement>('[data-row]');
  return cell && row ? { row: Number(row.dataset.row), column: Number(cell.dataset.column) } : null;
}
