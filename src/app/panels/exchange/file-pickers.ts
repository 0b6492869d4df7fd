import type { FileHandle } from './file-place.ts';

type SavePicker = (options: object) => Promise<FileHandle>;
type OpenPicker = (options: object) => Promise<FileHandle[]>;

/** The browser's dialogs for files on the user's disk, where it has them (File System Access). */
interface Pickers {
  readonly showSaveFilePicker?: SavePicker;
  readonly showOpenFilePicker?: OpenPicker;
}

const pickers = (): Pickers => window as unknown as Pickers;

/** The browser's dialog for saving to a chosen place; null where it has none. */
export function savePicker(): SavePicker | null {
  return pickers().showSaveFilePicker?.bind(window) ?? null;
}

/** The browser's dialog for opening a file that can be saved back to; null where it has none. */
export function openPicker(): OpenPicker | null {
  return pickers().showOpenFilePicker?.bind(window) ?? null;
}

/** Whether a dialog was closed without a choice. */
export function isDismissed(reason: unknown): boolean {
  return reason instanceof DOMException && reason.name === 'AbortError';
}
