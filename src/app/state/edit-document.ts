import type { Vertex } from '../../geom/vertex.ts';
import type { FileFault } from '../../interchange/json/file-fault.ts';
import type { FamilyDocument } from '../../interchange/json/read.ts';
import type { FamilyFile } from '../../interchange/json/schema.ts';
import type { DocumentState } from './document-state.ts';
import type { Doors } from './doors.ts';
import { isSameFamily } from './same-family.ts';
import type { Store } from './store.ts';

/**
 * Gives a profile another outline while a gesture is under way: the family shows it at once, and the whole gesture
 * becomes one step of undo when {@link endEdit} is called. An outline that is not sound is not taken; `editFault` says
 * why, and the last sound one stays.
 *
 * @returns whether the outline was taken.
 * @check tests/unit/app/edit-document.test.ts
 */
export function previewOutline(
  store: Store<DocumentState>,
  doors: Pick<Doors, 'replaceOutline'>,
  id: string,
  vertices: readonly Vertex[],
): boolean {
  const { document, editedFrom } = store.getState();
  if (!document) return false;
  const edit = doors.replaceOutline(document, id, vertices);
  if (!edit.ok) {
    store.setState({ editFault: edit.fault });
    return false;
  }
  store.setState({ document: edit.document, editedFrom: editedFrom ?? document, editFault: null });
  return true;
}

/**
 * Gives the family another value while a gesture is under way, as {@link previewOutline} does with one outline.
 *
 * @param next made from the value of the open family without changing it in place.
 * @returns null where it was taken, else everything that is wrong with it; the family then stays as it was.
 * @check tests/unit/app/edit-document.test.ts
 */
export function previewFamily(
  store: Store<DocumentState>,
  doors: Pick<Doors, 'changeFamily'>,
  next: FamilyFile,
): readonly FileFault[] | null {
  const { document, editedFrom } = store.getState();
  if (!document || next === document.file) return null;
  const edit = doors.changeFamily(next);
  if (!edit.ok) return edit.faults;
  store.setState({ document: edit.document, editedFrom: editedFrom ?? document, editFault: null });
  return null;
}

/**
 * One whole edit of the family, a step of undo of its own. A gesture under way is ended first.
 *
 * @returns null where it was taken, else everything that is wrong with it; the family then stays as it was.
 */
export function commitFamily(
  store: Store<DocumentState>,
  doors: Pick<Doors, 'changeFamily'>,
  next: FamilyFile,
): readonly FileFault[] | null {
  endEdit(store);
  const faults = previewFamily(store, doors, next);
  endEdit(store);
  return faults;
}

/** Everything that is wrong with an edit that was not taken; null where it was. */
export type Refusal = readonly FileFault[] | null;

/**
 * One whole edit of the open family, as {@link commitFamily} does it; without a family nothing is done.
 *
 * @param change a new value from the one that is open, which it leaves as it is.
 */
export function editFamily(
  { documents, doors }: { readonly documents: Store<DocumentState>; readonly doors: Pick<Doors, 'changeFamily'> },
  change: (file: FamilyFile) => FamilyFile,
): Refusal {
  const file = documents.getState().document?.file;
  return file ? commitFamily(documents, doors, change(file)) : null;
}

/**
 * Ends the gesture: what it changed becomes one step of undo, and nothing is left to redo. A gesture that ends where it
 * began is none: the document is the one from before it, and what was undone can still be done again.
 */
export function endEdit(store: Store<DocumentState>): void {
  const { document, editedFrom, past } = store.getState();
  const ended = { editedFrom: null, editFault: null } as const;
  if (!editedFrom || !document) store.setState(ended);
  else if (isSameFamily(editedFrom, document)) store.setState({ ...ended, document: editedFrom });
  else store.setState({ ...ended, future: [], ...withStep([...past, editedFrom], document, held.get(store)) });
}

/** The document as it was when the key went down that is held. */
const held = new WeakMap<Store<DocumentState>, FamilyDocument>();

/**
 * A key went down: whatever it does to the family until it is let go, however often it repeats, is one step of undo.
 *
 * @check tests/unit/app/edit-document.test.ts
 */
export function beginHold(store: Store<DocumentState>): void {
  const { document } = store.getState();
  if (document) held.set(store, document);
}

/** The key was let go: what follows is another step of undo. */
export function endHold(store: Store<DocumentState>): void {
  held.delete(store);
}

/** The steps with those of a held key as one; none of it where it ends where it began. */
function withStep(steps: readonly FamilyDocument[], document: FamilyDocument, from: FamilyDocument | undefined) {
  const at = from ? steps.indexOf(from) : -1;
  if (!from || at < 0) return { past: steps };
  if (isSameFamily(from, document)) return { past: steps.slice(0, at), document: from };
  return { past: steps.slice(0, at + 1) };
}

/** Gives the gesture up: the document is as it was before it. */
export function dropEdit(store: Store<DocumentState>): void {
  const { editedFrom } = store.getState();
  if (editedFrom) store.setState({ document: editedFrom, editedFrom: null, editFault: null });
}

/** Takes back the last step; a gesture under way is ended first and is that step. */
export function undo(store: Store<DocumentState>): void {
  endEdit(store);
  const { document, past, future } = store.getState();
  const before = past.at(-1);
  if (!before || !document) return;
  store.setState({ document: before, past: past.slice(0, -1), future: [...future, document], editFault: null });
}

/** Does again what was taken back last; a gesture under way is ended first, and then there is nothing to redo. */
export function redo(store: Store<DocumentState>): void {
  endEdit(store);
  const { document, past, future } = store.getState();
  const next = future.at(-1);
  if (!next || !document) return;
  store.setState({ document: next, past: [...past, document], future: future.slice(0, -1), editFault: null });
}
