import { chosenNow, putOutline, verticesInHand } from '../../state/draw/draw-editing.ts';
import type { Session } from '../../state/session.ts';
import { copyText, readPasted } from '../../tools/draw/pasted-vertices.ts';

/** The chosen rows as text, all rows where none is chosen. */
export function copyRows(session: Session): string {
  const vertices = verticesInHand(session);
  const chosen = chosenNow(session);
  const rows = chosen.length === 0 ? vertices : chosen.map((i) => vertices[i]);
  return copyText(rows, session.settings.getState().units);
}

/**
 * Pastes vertices as one step of undo: in place of the chosen rows where there are several in a row, else after the row
 * that has the focus.
 *
 * @returns what is told: what was done, or what is wrong with the text. Empty where the outline was refused, which the
 *   sheet tells.
 */
export function pasteRows(session: Session, after: number, text: string): { done: boolean; words: string } {
  const pasted = readPasted(text, session.settings.getState().units);
  if (!pasted.ok) return { done: false, words: pasted.words };
  const vertices = verticesInHand(session);
  const chosen = chosenNow(session);
  const first = chosen[0] ?? 0;
  const together = chosen.length > 1 && chosen.every((row, i) => row === first + i);
  const [from, to] = together ? [first, first + chosen.length] : [after + 1, after + 1];
  const count = pasted.vertices.length;
  const rows = pasted.vertices.map((_, i) => from + i);
  const wanted = vertices.toSpliced(from, to - from, ...pasted.vertices);
  if (!putOutline(session, wanted, rows)) return { done: false, words: '' };
  const what = count === 1 ? '1 vertex' : `${count} vertices`;
  return { done: true, words: together ? `${what} pasted in place of ${chosen.length}.` : `${what} pasted.` };
}
