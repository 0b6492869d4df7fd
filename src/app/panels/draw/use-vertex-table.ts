import { type RefObject, useLayoutEffect, useRef, useState } from 'react';
import type { Session } from '../../state/session.ts';
import type { CellPlace } from './vertex-table-keys.ts';

/** Height of a row and of the head, pixels. */
export const ROW = 28;

/** Most rows that are seen at once. */
export const SEEN = 12;

/** Rows drawn above and below those that are seen. */
const SPARE = 6;

/** A cell that is edited. */
export interface Entry {
  readonly place: CellPlace;
  /** What the entry begins with in place of the value; null: the value. */
  readonly text: string | null;
}

/** What the table of vertices knows by itself. */
export interface TableState {
  /** The cell in focus, and the row that a choice with shift reaches from. */
  readonly cell: CellPlace;
  readonly anchor: number;
  readonly entry: Entry | null;
  /** The row whose entry was not taken, and why; no words where the sheet tells it. */
  readonly fault: { readonly row: number; readonly words: string } | null;
  /** What was done, in words. */
  readonly told: string;
}

/** The table as its handlers see it. */
export interface TableHand extends TableState {
  readonly session: Session;
  readonly count: number;
  readonly frame: RefObject<HTMLDivElement | null>;
  /** How far the rows are scrolled, pixels. */
  readonly top: number;
  set(change: Partial<TableState>): void;
  onScroll(): void;
  /** Lets the cell in focus have the page's focus after the next drawing. */
  focusNext(): void;
}

const FIRST: TableState = { cell: { row: 0, column: 0 }, anchor: 0, entry: null, fault: null, told: '' };

/** The state of a table of `count` vertices; it goes where vertices are chosen, and keeps the cell in focus in sight. */
export function useVertexTable(session: Session, count: number, chosen: readonly number[]): TableHand {
  const [state, setState] = useState(FIRST);
  const [top, setTop] = useState(0);
  const frame = useRef<HTMLDivElement>(null);
  const wanted = useRef(false);
  const [, redraw] = useState(0);
  const cell = { ...state.cell, row: Math.min(state.cell.row, count - 1) };
  const set = (change: Partial<TableState>) => setState((now) => ({ ...now, ...change }));
  useFollowChoice(chosen, count, cell, set);
  useLayoutEffect(() => {
    const element = frame.current;
    if (!element) return;
    const room = element.clientHeight - ROW;
    if (ROW * cell.row < element.scrollTop) element.scrollTop = ROW * cell.row;
    else if (ROW * (cell.row + 1) > element.scrollTop + room) element.scrollTop = ROW * (cell.row + 1) - room;
  }, [cell.row]);
  // After every drawing: the focus follows the one that was asked for it.
  useLayoutEffect(() => {
    if (!wanted.current || state.entry) return;
    wanted.current = false;
    frame.current?.querySelector<HTMLElement>('[data-cell=active]')?.focus({ preventScroll: true });
  });
  const focusNext = () => {
    wanted.current = true;
    redraw((n) => n + 1);
  };
  return {
    ...state,
    cell,
    session,
    count,
    frame,
    top,
    set,
    onScroll: () => setTop(frame.current?.scrollTop ?? 0),
    focusNext,
  };
}

/** When vertices are chosen elsewhere, the table goes there. */
function useFollowChoice(
  chosen: readonly number[],
  count: number,
  cell: CellPlace,
  set: (change: Partial<TableState>) => void,
): void {
  const before = useRef(chosen);
  useLayoutEffect(() => {
    if (before.current === chosen) return;
    before.current = chosen;
    const last = chosen.at(-1);
    if (last === undefined || last >= count || chosen.includes(cell.row)) return;
    set({ cell: { ...cell, row: last }, anchor: last, entry: null, fault: null });
  });
}

/** The rows to be drawn, each with the number of rows left out before it; last the end of the table. */
export function spacedRows(top: number, count: number, active: number): { row: number; before: number }[] {
  const first = Math.min(Math.max(0, Math.floor(top / ROW) - SPARE), Math.max(0, count - 1));
  const last = Math.min(count - 1, first + SEEN + 2 * SPARE);
  const rows = rowsBetween(first, last);
  // The row in focus is always there, or the focus would be lost when it goes out of sight.
  if (active < first) rows.unshift(active);
  if (active > last) rows.push(active);
  return [...rows, count].map((row, i) => ({ row, before: row - (i === 0 ? 0 : rows[i - 1] + 1) }));
}

/** The rows from one to another, whichever comes first. */
export function rowsBetween(a: number, b: number): number[] {
  return Array.from({ length: Math.abs(a - b) + 1 }, (_, i) => Math.min(a, b) + i);
}
