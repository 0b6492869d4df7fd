import { markSaved } from '../../state/document-state.ts';
import { showNotice } from '../../state/notices-state.ts';
import type { Session } from '../../state/session.ts';
import { tellNotSaved } from '../keep/tell-not-saved.ts';
import { isDismissed, savePicker } from './file-pickers.ts';
import { type FileHandle, type FilePlace, placeOf, setPlace } from './file-place.ts';

const FILE_TYPES = [{ description: 'Family file', accept: { 'application/json': ['.json'] } }];

/** True where {@link saveAs} can offer a place to save to. */
export function canSaveAs(): boolean {
  return savePicker() !== null;
}

/** Where {@link saveFamily} saves to, in few words. */
export function savesTo(session: Session): string {
  const place = placeOf(session);
  if (place) return `into ${place.handle.name}`;
  return canSaveAs() ? 'to a place you pick' : 'into your downloads';
}

/** What is to be saved: the text of a file, the name to save it under, and how to note that it is saved. */
interface FileToSave {
  readonly text: string;
  readonly name: string;
  markSaved(): void;
}

/** The open family as a file, edits and all; null when none is open. */
function fileToSave({ documents, doors }: Session): FileToSave | null {
  const { document: family, fileName } = documents.getState();
  if (!family) return null;
  return {
    text: doors.writeFamily(family.file),
    name: fileName.endsWith('.json') ? fileName : `${fileName || 'family'}.json`,
    markSaved: () => markSaved(documents, family),
  };
}

/** Saves the open family where it came from; else to a place that the user picks, or into the downloads. */
export async function saveFamily(session: Session): Promise<void> {
  const place = placeOf(session);
  if (place) await saveBack(session, place);
  else if (canSaveAs()) await saveAs(session);
  else downloadFamily(session);
}

/** Saves the open family into the browser's downloads: the way that always works. */
export function downloadFamily(session: Session): void {
  const file = fileToSave(session);
  if (!file) return;
  downloadText(file.text, file.name);
  file.markSaved();
}

/** Saves a text into the browser's downloads. */
export function downloadText(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** Saves the open family to a place that the user picks; falls back to a download where the place cannot be written. */
export async function saveAs(session: Session): Promise<void> {
  const file = fileToSave(session);
  const pick = savePicker();
  if (!file || !pick) return;
  try {
    const handle = await pick({ suggestedName: file.name, types: FILE_TYPES });
    await writeTo(session, handle, file);
  } catch (reason) {
    if (isDismissed(reason)) return;
    downloadFamily(session);
    showNotice(session, tellNotSaved(session, 'The place could not be written: it was saved into your downloads.', []));
  }
}

/** Saves into the file that the family came from, unless it may not be written or another program has changed it. */
async function saveBack(session: Session, { handle, lastModified }: FilePlace): Promise<void> {
  const file = fileToSave(session);
  if (!file) return;
  try {
    if (!(await mayWrite(handle))) return refused(session, `The browser may not write ${handle.name}.`);
    const changed = (await handle.getFile()).lastModified !== lastModified;
    const question = `${handle.name} was changed by another program since you opened or saved it. Write over those changes?`;
    if (changed && !window.confirm(question)) return;
    await writeTo(session, handle, file);
  } catch {
    // A file is replaced only when all of it is written.
    refused(session, `${handle.name} could not be written; what was in it before is still there.`);
  }
}

async function mayWrite(handle: FileHandle): Promise<boolean> {
  const mode = { mode: 'readwrite' } as const;
  const state = (await handle.queryPermission?.(mode)) ?? 'granted';
  return state === 'granted' || (await handle.requestPermission?.(mode)) === 'granted';
}

async function writeTo(session: Session, handle: FileHandle, file: FileToSave): Promise<void> {
  const { opened } = session.documents.getState();
  const stream = await handle.createWritable();
  await stream.write(file.text);
  await stream.close();
  const { lastModified } = await handle.getFile();
  if (session.documents.getState().opened !== opened) return;
  setPlace(session, handle, lastModified);
  session.documents.setState({ fileName: handle.name });
  file.markSaved();
}

function refused(session: Session, words: string): void {
  const keys = [
    ...(canSaveAs() ? [{ label: 'Save as…', press: () => saveAs(session) }] : []),
    { label: 'Save into downloads', press: () => downloadFamily(session) },
  ];
  showNotice(session, tellNotSaved(session, words, keys));
}
