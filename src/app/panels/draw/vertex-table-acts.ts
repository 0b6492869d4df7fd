import type { ClipboardEvent, KeyboardEvent, MouseEvent } from 'react';
import { chooseVertices, chosenNow, insertVertex, toggleVertex } from '../../state/draw/draw-editing.ts';
import { rowsBetween, type TableHand } from './use-vertex-table.ts';
import type { EntryEnd } from './vertex-cell.tsx';
import { copyRows, pasteRows } from './vertex-clipboard.ts';
import { COLUMNS, takeEntry } from './vertex-entry.ts';
import { type CellPlace, cellAfterTab, tableStep } from './vertex-table-keys.ts';

/** A key that is pressed in the table while no cell is edited. */
export function pressKey(hand: TableHand, event: KeyboardEvent): void {
  const { session, cell, anchor, count, entry, set } = hand;
  if (entry || event.altKey) return;
  const pressed = { key: event.key, shift: event.shiftKey, command: event.ctrlKey || event.metaKey };
  const step = tableStep(session, cell, anchor, count, pressed);
  if (!step) return;
  event.preventDefault();
  if (step.kind === 'edit') {
    set({ entry: { place: cell, text: step.text }, fault: null, told: '' });
    return;
  }
  const anchored = step.kind === 'go' && !event.shiftKey ? { anchor: step.to.row } : {};
  set({ ...(step.kind === 'go' ? { cell: step.to } : {}), ...anchored, fault: null, told: '' });
  hand.focusNext();
}

/** Takes an entry, and goes on where its end leads; returns whether the entry is over. */
export function takeInto(hand: TableHand, text: string, end: EntryEnd): boolean {
  const { session, entry, count, set } = hand;
  if (!entry) return true;
  const { place } = entry;
  const answer = takeEntry(session, place.row, COLUMNS[place.column], text);
  const taken = answer === 'taken';
  const fault = taken ? null : { row: place.row, words: typeof answer === 'object' ? answer.words : '' };
  if (!taken && end !== 'stay') {
    set({ fault });
    return false;
  }
  const cell = afterEntry(place, end, count);
  set({ entry: null, fault, cell, anchor: cell.row });
  if (end === 'insert') insertVertex(session, place.row);
  else if (end !== 'stay') chooseVertices(session, [cell.row]);
  if (end !== 'stay') hand.focusNext();
  return true;
}

/** Where the focus goes when an entry was taken. */
function afterEntry(place: CellPlace, end: EntryEnd, count: number): CellPlace {
  if (end === 'stay') return place;
  if (end === 'insert') return { row: place.row + 1, column: 0 };
  if (end === 'down') return { row: Math.min(count - 1, place.row + 1), column: place.column };
  return cellAfterTab(place, count, end === 'back') ?? place;
}

/** Copies the chosen rows. */
export function copyFrom({ session, entry, set }: TableHand, event: ClipboardEvent): void {
  if (entry) return;
  event.preventDefault();
  event.clipboardData.setData('text/plain', copyRows(session));
  const count = chosenNow(session).length;
  const what = count === 1 ? '1 row' : `${count} rows`;
  set({ told: count === 0 ? 'All rows copied.' : `${what} copied.` });
}

/** Pastes rows; what is wrong with them is told and changes nothing. */
export function pasteInto(hand: TableHand, event: ClipboardEvent): void {
  const { session, entry, cell, set } = hand;
  if (entry) return;
  event.preventDefault();
  event.stopPropagation();
  const { done, words } = pasteRows(session, cell.row, event.clipboardData.getData('text/plain'));
  set(done ? { told: words, fault: null } : { told: '', fault: { row: cell.row, words } });
  hand.focusNext();
}

/** A press on a cell chooses its row; with shift all rows from the one before, with Ctrl or Cmd it adds or takes out. */
export function pressRow(hand: TableHand, event: MouseEvent, cell: CellPlace): void {
  const { session, anchor, set } = hand;
  const { row } = cell;
  set({ cell, entry: null, fault: null, ...(event.shiftKey ? {} : { anchor: row }) });
  if (event.shiftKey) chooseVertices(session, rowsBetween(anchor, row));
  else if (event.ctrlKey || event.metaKey) toggleVertex(session, row);
  else chooseVertices(session, [row]);
  hand.focusNext();
}
