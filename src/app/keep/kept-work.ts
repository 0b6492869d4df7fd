import { applyEdit, diffFiles, type FileEdit, invertEdit } from '../../interchange/json/file-edit.ts';
import type { FamilyDocument } from '../../interchange/json/read.ts';
import type { FamilyFile } from '../../interchange/json/schema.ts';
import type { DocumentState, OpenedFamily } from '../state/document-state.ts';
import type { Doors } from '../state/doors.ts';

/** The version of the form that work is kept in. */
const KEPT_VERSION = 1;

/**
 * Most that is kept of a history, in characters of its steps written as JSON. A moved corner takes about 150, so this
 * is some 6,000 steps; the oldest go first.
 */
const MOST_HISTORY = 1_000_000;

/**
 * Most that a history may hold of long texts, which are pictures, in characters. They are counted apart: a step that
 * brings a picture in would else leave no room for all the small ones before it.
 */
export const MOST_PICTURES = 20_000_000;

/** A text of more characters counts as a picture. */
const LONG_TEXT = 20_000;

/** Where the document that a file holds stands: so many steps from the oldest kept one, an edit away, or nowhere. */
export type KeptSaved = { readonly at: number } | { readonly edit: FileEdit } | null;

/** An open family as it is kept: the file's value, its history as edits, and which of it is saved in a file. */
export interface KeptWork {
  readonly version: typeof KEPT_VERSION;
  readonly fileName: string;
  readonly file: FamilyFile;
  /** The steps that led to `file`, the oldest first. */
  readonly past: readonly FileEdit[];
  /** The steps that were taken back, the next to redo first. */
  readonly future: readonly FileEdit[];
  readonly saved: KeptSaved;
  /** How many steps of undo were too many to keep. */
  readonly dropped: number;
}

interface Step extends StepSize {
  readonly before: FamilyDocument;
  readonly edit: FileEdit;
}

/** What a step takes, in characters: written as JSON without its long texts, and those. */
interface StepSize {
  readonly length: number;
  readonly pictures: number;
}

/** The step that led to a document; found once, since documents are values. */
const steps = new WeakMap<FamilyDocument, Step>();

function stepBetween(before: FamilyDocument, after: FamilyDocument): Step {
  const known = steps.get(after);
  if (known?.before === before) return known;
  const edit = diffFiles(before.file, after.file);
  const made = { before, edit, ...sizeOf(edit) };
  steps.set(after, made);
  return made;
}

function sizeOf(edit: FileEdit): StepSize {
  let pictures = 0;
  const { length } = JSON.stringify(edit, (_name, value: unknown) => {
    if (typeof value !== 'string' || value.length <= LONG_TEXT) return value;
    pictures += value.length;
    return '';
  });
  return { length, pictures };
}

function sumOf(all: readonly StepSize[]): StepSize {
  const sum = (size: keyof StepSize) => all.reduce((total, step) => total + step[size], 0);
  return { length: sum('length'), pictures: sum('pictures') };
}

/** The part of a window's state that is kept; a gesture under way is not in it, nor what it has changed so far. */
export type WorkState = OpenedFamily;

/** What there is to keep of the open family: while a gesture is under way the document before it; null when none is open. */
export function workState(state: DocumentState): WorkState | null {
  const { document, editedFrom, fileName, saved, past, future } = state;
  return document && { document: editedFrom ?? document, fileName, saved, past, future };
}

/**
 * The open family in the form that it is kept in. The history costs what was changed since it was last asked for.
 *
 * @param mostHistory see {@link MOST_HISTORY}.
 * @check tests/unit/app/kept-work.test.ts
 */
export function packWork(state: WorkState, mostHistory = MOST_HISTORY): KeptWork {
  const { document, fileName, saved } = state;
  const ahead = stepsAlong([document, ...state.future.toReversed()]);
  const used = sumOf(ahead);
  const room = { length: mostHistory - used.length, pictures: MOST_PICTURES - used.pictures };
  const behind = fittingSteps(stepsAlong([...state.past, document]), room);
  const dropped = state.past.length - behind.length;
  const line = [...state.past.slice(dropped), document, ...state.future.toReversed()];
  return {
    version: KEPT_VERSION,
    fileName,
    file: document.file,
    past: behind.map((step) => step.edit),
    future: ahead.map((step) => step.edit),
    saved: saved && savedPlace(saved, line, document),
    dropped,
  };
}

function stepsAlong(line: readonly FamilyDocument[]): Step[] {
  return line.slice(1).map((after, i) => stepBetween(line[i], after));
}

/** As many of the latest steps as there is room for. */
function fittingSteps(all: readonly Step[], room: StepSize): readonly Step[] {
  const used = { length: 0, pictures: 0 };
  const tooMany = all.findLastIndex((step) => {
    used.length += step.length;
    used.pictures += step.pictures;
    return used.length > room.length || used.pictures > room.pictures;
  });
  return all.slice(tooMany + 1);
}

function savedPlace(saved: FamilyDocument, line: readonly FamilyDocument[], present: FamilyDocument): KeptSaved {
  const at = line.indexOf(saved);
  return at >= 0 ? { at } : { edit: diffFiles(present.file, saved.file) };
}

/** Kept work made ready to open; `historyLost` where its history could not be used, so that only the family is left. */
export type Unpacked =
  | { readonly ok: true; readonly family: OpenedFamily; readonly historyLost: boolean }
  | { readonly ok: false; readonly why: string };

/**
 * Reads what was kept. The family is looked at as strictly as one from a file, so that a damaged record is told and
 * never half opened; a history that does not fit it is left behind.
 *
 * @param kept whatever the store gave back.
 * @check tests/unit/app/kept-work.test.ts
 */
export function unpackWork(kept: unknown, doors: Pick<Doors, 'readFamily' | 'writeFamily' | 'changeFamily'>): Unpacked {
  if (!isKeptWork(kept)) return { ok: false, why: 'It is not in a form that this program knows.' };
  const text = textOf(kept.file, doors);
  const read = text === null ? null : doors.readFamily(text);
  if (!read?.ok) return { ok: false, why: read ? `${read.faults[0].path} ${read.faults[0].what}.` : 'It is cut off.' };
  const { document } = read;
  const { fileName } = kept;
  const asKept = textOf(document.file, doors) === text;
  const history = asKept ? unpackHistory(kept, document, doors) : null;
  const family = history ?? { past: [], future: [], saved: null };
  return { ok: true, family: { document, fileName, ...family }, historyLost: history === null };
}

function textOf(file: FamilyFile, doors: Pick<Doors, 'writeFamily'>): string | null {
  try {
    return doors.writeFamily(file);
  } catch {
    return null;
  }
}

function unpackHistory(
  { past, future, saved }: KeptWork,
  document: FamilyDocument,
  { changeFamily }: Pick<Doors, 'changeFamily'>,
): Pick<OpenedFamily, 'past' | 'future' | 'saved'> | null {
  const open = (file: FamilyFile): FamilyDocument => {
    const read = changeFamily(file);
    if (!read.ok) throw new RangeError(read.faults[0].what);
    return read.document;
  };
  try {
    const before = walkSteps(document, past.toReversed().map(invertEdit), open).reverse();
    const after = walkSteps(document, future, open);
    const line = [...before, document, ...after];
    return { past: before, future: after.reverse(), saved: saved && savedFrom(saved, line, document, open) };
  } catch {
    // A step that does not fit the family: better no history than a wrong one.
    return null;
  }
}

/** The documents that edits lead to, one after the other. */
function walkSteps(
  from: FamilyDocument,
  edits: readonly FileEdit[],
  open: (file: FamilyFile) => FamilyDocument,
): FamilyDocument[] {
  let { file } = from;
  return edits.map((edit) => {
    file = applyEdit(file, edit);
    return open(file);
  });
}

function savedFrom(
  saved: NonNullable<KeptSaved>,
  line: readonly FamilyDocument[],
  document: FamilyDocument,
  open: (file: FamilyFile) => FamilyDocument,
): FamilyDocument | null {
  if ('at' in saved) return line[saved.at] ?? null;
  return saved.edit.length === 0 ? document : open(applyEdit(document.file, saved.edit));
}

function isKeptWork(value: unknown): value is KeptWork {
  if (typeof value !== 'object' || value === null) return false;
  const { version, fileName, file, past, future } = value as Record<string, unknown>;
  const listed = Array.isArray(past) && Array.isArray(future);
  return (
    version === KEPT_VERSION && typeof fileName === 'string' && typeof file === 'object' && file !== null && listed
  );
}
