import { Importing, type IncomingFile } from '../../state/exchange/importing.ts';
import { bringUnknown } from '../../state/names/identifying.ts';
import type { Session } from '../../state/session.ts';
import { showIncoming } from '../../state/tiers/claims-state.ts';
import { takePicture } from '../trace/take-picture.ts';
import { openFile } from './open-file.ts';

/** A file from the disk, the clipboard or a drop. */
interface DiskFile extends IncomingFile {
  readonly file: File;
}

const importers = new WeakMap<Session, Importing<DiskFile>>();

/** What brings files into a window's family. */
export function importingOf(session: Session): Importing<DiskFile> {
  const known = importers.get(session);
  if (known) return known;
  const made = new Importing<DiskFile>(session, {
    takePicture: ({ file }) => takePicture(session, file),
    takeClaims: (name, text) => showIncoming(session, name, text),
    openFamily: ({ file }) => void openFile(session, file),
    identify: (outline) => bringUnknown(session, { ...outline, source: 'file' }),
  });
  importers.set(session, made);
  return made;
}

/** What the picker of files to import offers. */
const ACCEPTED = '.svg,.dxf,.csv,.tsv,.txt,.json,.png,.jpg,.jpeg,.webp,image/svg+xml,image/png,image/jpeg,image/webp';

/** Has the user pick files and takes them in. */
export function pickImports(session: Session): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.multiple = true;
  input.accept = ACCEPTED;
  input.onchange = () => takeFiles(session, input.files ?? []);
  input.click();
}

/** Takes in files that were picked, dropped or pasted. */
export function takeFiles(session: Session, files: Iterable<File>): void {
  importingOf(session).take([...files].map(diskFile));
}

/** Takes in a text that was pasted. */
export function takeText(session: Session, text: string): void {
  takeFiles(session, [new File([text], 'Pasted text', { type: 'text/plain' })]);
}

/** Says that something could not be taken in, and what to do. */
export function refuseIncoming(session: Session, name: string, what: string, cure: string): void {
  session.documents.setState({ refusal: { fileName: name, faults: [{ path: name, what, cure }] } });
}

function diskFile(file: File): DiskFile {
  return {
    file,
    name: file.name,
    size: file.size,
    head: async (bytes) => new Uint8Array(await file.slice(0, bytes).arrayBuffer()),
    text: async (encoding) => new TextDecoder(encoding).decode(await file.arrayBuffer()),
  };
}
