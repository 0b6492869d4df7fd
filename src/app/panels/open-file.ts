import { openText, refuseFile } from '../state/document-state.ts';
import type { Session } from '../state/session.ts';
import { mayReplace } from './may-replace.ts';

/** Larger files than this are not even read: a family of hundreds of traced sections stays far below. */
const LARGEST_FILE = 64 * 1024 * 1024;

/** Reads a family file that the user picked or dropped; whatever is wrong with it is shown and the open family stays. */
export async function openFile(session: Session, file: File): Promise<void> {
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
  if (!mayReplace(session)) return;
  documents.setState({ reading: true });
  try {
    openText(documents, doors, await file.text(), file.name);
  } catch {
    refuseFile(
      documents,
      file.name,
      'The file cannot be read.',
      'Pick a file, not a folder, and see that it still exists.',
    );
  }
}
