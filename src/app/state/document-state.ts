import type { OutlineFault } from '../../geom/check-outline.ts';
import type { FileFault } from '../../interchange/json/file-fault.ts';
import type { FamilyDocument } from '../../interchange/json/read.ts';
import type { Doors } from './doors.ts';
import { makeStore, type Store } from './store.ts';

/** A file that could not be opened: what it was called and everything that is wrong with it. */
export interface Refusal {
  readonly fileName: string;
  readonly faults: readonly FileFault[];
}

/** The family that is open. The document is a value: an edit makes a new one and leaves the old one whole. */
export interface DocumentState {
  readonly document: FamilyDocument | null;
  readonly fileName: string;
  /** True while a file is being read. */
  readonly reading: boolean;
  /** The last file that was refused, until the user puts the notice away or opens a good one. */
  readonly refusal: Refusal | null;
  /** Counts the families that were opened; an edit is no opening. */
  readonly opened: number;
  /** The document as a file holds it; null where none does. Another one has edits that no file holds. */
  readonly saved: FamilyDocument | null;
  /** Documents before the present one, the latest last, and those undone, the next one last. */
  readonly past: readonly FamilyDocument[];
  readonly future: readonly FamilyDocument[];
  /** The document as it was when the edit under way began; null between edits. */
  readonly editedFrom: FamilyDocument | null;
  /** Why the last outline was not taken and where; null where it was. */
  readonly editFault: OutlineFault | null;
}

const NO_HISTORY = { past: [], future: [], editedFrom: null, editFault: null } as const;

/** A store with no family in it. */
export function makeDocumentStore(): Store<DocumentState> {
  const nothing = { document: null, fileName: '', reading: false, refusal: null, opened: 0, saved: null };
  return makeStore<DocumentState>({ ...nothing, ...NO_HISTORY });
}

/**
 * Puts the family of `text` in place of the open one. A text with faults changes nothing but `refusal`:
 * the family that was open stays open.
 *
 * @returns true when the family was opened.
 * @check tests/unit/app/session.test.ts
 */
export function openText(
  store: Store<DocumentState>,
  doors: Pick<Doors, 'readFamily'>,
  text: string,
  fileName: string,
): boolean {
  const answer = doors.readFamily(text);
  if (!answer.ok) {
    store.setState({ refusal: { fileName, faults: answer.faults }, reading: false });
    return false;
  }
  const { document } = answer;
  openDocument(store, { document, fileName, saved: document, past: [], future: [] });
  return true;
}

/** A family with its history, as it is put in place of the open one. */
export type OpenedFamily = Pick<DocumentState, 'fileName' | 'saved' | 'past' | 'future'> & {
  readonly document: FamilyDocument;
};

/**
 * Puts a family in place of the open one, with what can be undone and redone of it. Where `saved` is not the document
 * itself it counts as edited; null where no file holds it.
 */
export function openDocument(store: Store<DocumentState>, family: OpenedFamily): void {
  const opened = store.getState().opened + 1;
  store.setState({ ...NO_HISTORY, refusal: null, reading: false, opened, ...family });
}

/** Whether the open document has edits that are not saved. */
export function isEdited({ document, saved }: DocumentState): boolean {
  return document !== saved;
}

/** Notes that `document` is what the file now holds. */
export function markSaved(store: Store<DocumentState>, document: FamilyDocument): void {
  store.setState({ saved: document });
}

/** Notes that `fileName` could not even be read as a text, for the reason given. */
export function refuseFile(store: Store<DocumentState>, fileName: string, what: string, cure: string): void {
  store.setState({ refusal: { fileName, faults: [{ path: 'file', what, cure }] }, reading: false });
}
