import type { Session } from '../../state/session.ts';

/** A file on the user's disk that the browser lets us read and, when asked, write. */
export interface FileHandle {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{ write(body: string | BufferSource | Blob): Promise<void>; close(): Promise<void> }>;
  /** Chromium's way to ask whether we may write; absent elsewhere. */
  queryPermission?(mode: { mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission?(mode: { mode: 'readwrite' }): Promise<PermissionState>;
}

/** The file that the open family came from or was saved to last. */
export interface FilePlace {
  readonly handle: FileHandle;
  /** When the file was last changed as far as we know, milliseconds since 1970: later means by another program. */
  readonly lastModified: number;
  /** Which opening of the session it belongs to: another family has another place. */
  readonly opened: number;
}

const places = new WeakMap<Session, FilePlace>();

/** The file that Save writes back to; null where the open family has none. */
export function placeOf(session: Session): FilePlace | null {
  const place = places.get(session);
  return place && place.opened === session.documents.getState().opened ? place : null;
}

/** Notes which file the open family is in. */
export function setPlace(session: Session, handle: FileHandle, lastModified: number): void {
  places.set(session, { handle, lastModified, opened: session.documents.getState().opened });
}
