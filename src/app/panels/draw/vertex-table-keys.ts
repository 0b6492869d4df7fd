import {
  chooseAll,
  chooseVertices,
  chosenNow,
  deleteVertices,
  insertVertex,
  toggleVertex,
} from '../../state/draw/draw-editing.ts';
import type { Session } from '../../state/session.ts';
import { COLUMNS } from './vertex-entry.ts';

/** The cell that has the focus; column -1 is the row's number. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

/** A key press, as far as the table asks. */
export interface TableKey {
  readonly key: string;
  readonly shift: boolean;
  /** Ctrl or Cmd. */
  readonly command: boolean;
}

/** Where a key leads, or that a cell is to be edited, beginning with `text` (null: with what is in it). */
export type TableStep =
  | { readonly kind: 'go'; readonly to: CellPlace }
  | { readonly kind: 'edit'; readonly text: string | null }
  | { readonly kind: 'done' }
  | null;

const LAST_COLUMN = COLUMNS.length - 1;

/** Rows that a page key goes. */
const PAGE = 10;

/** Begins an entry in place of what is in the cell. */
const BEGINS_ENTRY = /^[-+=.,@(\d]$/;

/**
 * What a key does in the table of vertices while no cell is edited; null for a key that it has no use for.
 *
 * @param from the cell in focus.
 * @param anchor the row that a choice with shift reaches from.
 * @param count rows.
 * @source keys of a grid: W3C, ARIA Authoring Practices Guide, grid pattern.
 * @check tests/unit/app/draw-vertex-table.test.ts
 */
export function tableStep(
  session: Session,
  from: CellPlace,
  anchor: number,
  count: number,
  pressed: TableKey,
): TableStep {
  const to = placeAfter(from, count, pressed);
  if (to) {
    if (to.row !== from.row || pressed.shift) chooseVertices(session, pressed.shift ? span(anchor, to.row) : [to.row]);
    return { kind: 'go', to };
  }
  // At once, not when the choice is heard of: the next key may be typed before that.
  if (pressed.key === 'Insert' && insertVertex(session, from.row))
    return { kind: 'go', to: { row: from.row + 1, column: Math.max(0, from.column) } };
  return editStep(from, pressed) ?? (actStep(session, from, pressed) ? { kind: 'done' } : null);
}

function placeAfter({ row, column }: CellPlace, count: number, { key, command }: TableKey): CellPlace | null {
  const at = (toRow: number, toColumn: number) => ({
    row: Math.min(count - 1, Math.max(0, toRow)),
    column: Math.min(LAST_COLUMN, Math.max(-1, toColumn)),
  });
  switch (key) {
    case 'ArrowDown':
      return at(command ? count - 1 : row + 1, column);
    case 'ArrowUp':
      return at(command ? 0 : row - 1, column);
    case 'ArrowRight':
      return at(row, column + 1);
    case 'ArrowLeft':
      return at(row, column - 1);
    case 'PageDown':
      return at(row + PAGE, column);
    case 'PageUp':
      return at(row - PAGE, column);
    case 'Home':
      return command ? at(0, -1) : at(row, -1);
    case 'End':
      return command ? at(count - 1, LAST_COLUMN) : at(row, LAST_COLUMN);
    default:
      return null;
  }
}

function editStep({ column }: CellPlace, { key, command }: TableKey): TableStep {
  if (command || column < 0) return null;
  if (key === 'Enter' || key === 'F2') return { kind: 'edit', text: null };
  return BEGINS_ENTRY.test(key) ? { kind: 'edit', text: key } : null;
}

function actStep(session: Session, { row }: CellPlace, { key, command }: TableKey): boolean {
  if (command && key.toLowerCase() === 'a') chooseAll(session);
  else if (command) return false;
  else if (key === ' ') toggleVertex(session, row);
  else if (key === 'Delete' || key === 'Backspace') {
    const chosen = chosenNow(session);
    deleteVertices(session, chosen.length > 0 ? chosen : [row]);
  } else return false;
  return true;
}

/** The rows from one to another, whichever comes first. */
function span(a: number, b: number): number[] {
  const first = Math.min(a, b);
  return Array.from({ length: Math.abs(a - b) + 1 }, (_, i) => first + i);
}

/** The cell that Tab leads to from an edited one: along the row, then to the next; null at either end. */
export function cellAfterTab({ row, column }: CellPlace, count: number, back: boolean): CellPlace | null {
  const place = row * COLUMNS.length + column + (back ? -1 : 1);
  if (place < 0 || place >= count * COLUMNS.length) return null;
  return { row: Math.floor(place / COLUMNS.length), column: place % COLUMNS.length };
}
