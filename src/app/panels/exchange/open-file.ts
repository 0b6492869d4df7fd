import { openText, refuseFile } from '../../state/document-state.ts';
import type { Session } from '../../state/session.ts';
import { isDismissed, openPicker } from './file-pickers.ts';
import { type FileHandle, setPlace } from './file-place.ts';
import { mayReplace } from './may-replace.ts';

/** Larger files than this are not even read: a family of hundreds of traced sections stays far below. */
const LARGEST_FILE = 64 * 1024 * 1024;

/** What the pickers offer, by media type. */
export const OPENABLE: Readonly<Record<string, readonly string[]>> = { 'application/json': ['.json'] };

/** {@link OPENABLE} as an input of the page takes it. */
export const ACCEPTED = Object.entries(OPENABLE)
  .flatMap(([media, ends]) => [...ends, media])
  .join(',');

/** Has the user pick a file and opens it; `pickPlainly` is asked where the browser has no dialog that lets us save back. */
export async function pickFile(session: Session, pickPlainly: () => void): Promise<void> {
  const pick = openPicker();
  if (!pick) {
    pickPlainly();
    return;
  }
  try {
    const [handle] = await pick({ types: [{ description: 'Family file', accept: OPENABLE }] });
    if (handle) await openFile(session, await handle.getFile(), handle);
  } catch (reason) {
    if (!isDismissed(reason)) pickPlainly();
  }
}

/**
 * Reads a family file that the user picked or dropped; whatever is wrong with it is shown and the open family stays.
 * @param handle where the browser gave one: Save then writes back to the same file.
 */
export async function openFile(session: Session, file: File, handle?: FileHandle): Promise<void> {
  const { documents, doors } = session;
  if (file.size > LARGEST_FILE) {
    const megabytes = Math.round(file.size / 1024 / 1024);
    refuseFile(
      documents,
      file.name,
      `The file has ${megabytes} MB, more than any family.`,
      'Pick a family file (.json).',
    );
    return;
  }
  const sniffed = doors.interchange.sniffFormat(file.name, await headOf(file));
  if (sniffed.ok && sniffed.format !== 'family') {
    refuseFile(
      documents,
      file.name,
      'The file is a drawing or a picture, no family.',
      'Choose Import… in the Family menu, or drop it on the window.',
    );
    return;
  }
  if (!mayReplace(session)) return;
  documents.setState({ reading: true });
  try {
    const opened = openText(documents, doors, await file.text(), file.name);
    if (opened && handle) setPlace(session, handle, file.lastModified);
  } catch {
    refuseFile(
      documents,
      file.name,
      'The file cannot be read.',
      'Pick a file, not a folder, and see that it still exists.',
    );
  }
}

/** The first bytes, enough to know what it is; none where it cannot be read. */
async function headOf(file: File): Promise<Uint8Array> {
  try {
    return new Uint8Array(await file.slice(0, 65_536).arrayBuffer());
  } catch {
    return new Uint8Array();
  }
}
