import { markSaved } from '../state/document-state.ts';
import type { Session } from '../state/session.ts';

interface WritableHandle {
  createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>;
}

type SavePicker = (options: object) => Promise<WritableHandle>;

const FILE_TYPES = [{ description: 'Family file', accept: { 'application/json': ['.json'] } }];

/** The browser's dialog for saving to a chosen place, where it has one. */
function savePicker(): SavePicker | null {
  const picker = (window as unknown as { showSaveFilePicker?: SavePicker }).showSaveFilePicker;
  return picker ? picker.bind(window) : null;
}

/** True where {@link saveAs} can offer a place to save to. */
export function canSaveAs(): boolean {
  return savePicker() !== null;
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

/** Saves the open family into the browser's downloads. */
export function saveFamily(session: Session): void {
  const file = fileToSave(session);
  if (!file) return;
  const address = URL.createObjectURL(new Blob([file.text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
  file.markSaved();
}

/** Saves the open family to a place that the user picks; falls back to a download where the place cannot be written. */
export async function saveAs(session: Session): Promise<void> {
  const file = fileToSave(session);
  const pick = savePicker();
  if (!file || !pick) return;
  try {
    const handle = await pick({ suggestedName: file.name, types: FILE_TYPES });
    const stream = await handle.createWritable();
    await stream.write(file.text);
    await stream.close();
    file.markSaved();
  } catch (reason) {
    const closedByUser = reason instanceof DOMException && reason.name === 'AbortError';
    if (!closedByUser) saveFamily(session);
  }
}
