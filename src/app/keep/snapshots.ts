import type { FamilyFile } from '../../interchange/json/schema.ts';
import { familyLabel } from './family-label.ts';
import type { KeepShelf } from './shelf.ts';
import type { FamilyLabel } from './work-records.ts';

/** A family as it was at one moment, under a name that the user gave. */
export interface Snapshot extends FamilyLabel {
  readonly version: 1;
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly takenAt: number;
  readonly file: FamilyFile;
}

const prefix = (workId: string): string => `snapshot/${workId}/`;
const keyOf = (workId: string, id: string): string => prefix(workId) + id;

/** The snapshots of a work, the latest first. */
export async function listSnapshots(shelf: KeepShelf, workId: string): Promise<Snapshot[]> {
  const keys = (await shelf.keys()).filter((key) => key.startsWith(prefix(workId)));
  const found = (await shelf.getMany(keys)).filter(isSnapshot);
  return found.sort((a, b) => b.takenAt - a.takenAt);
}

/**
 * Keeps the family as it is under a name.
 * @throws what the shelf throws, such as a full disk; then no snapshot is there.
 */
export async function takeSnapshot(
  shelf: KeepShelf,
  workId: string,
  given: { readonly id: string; readonly title: string; readonly takenAt: number; readonly file: FamilyFile },
): Promise<Snapshot> {
  const snapshot: Snapshot = { version: 1, ...given, ...familyLabel(given.file) };
  await shelf.set(keyOf(workId, snapshot.id), snapshot);
  return snapshot;
}

/** Gives a snapshot another name. */
export function renameSnapshot(shelf: KeepShelf, workId: string, id: string, title: string): Promise<void> {
  return shelf.update(keyOf(workId, id), (old) => (isSnapshot(old) ? { ...old, title } : old));
}

/** Removes a snapshot; returns what puts it back. */
export async function removeSnapshot(shelf: KeepShelf, workId: string, id: string): Promise<() => Promise<void>> {
  const key = keyOf(workId, id);
  const record = await shelf.get(key);
  await shelf.remove([key]);
  return () => shelf.set(key, record);
}

/** Gives a work copies of another work's snapshots. */
export async function copySnapshots(shelf: KeepShelf, fromId: string, toId: string): Promise<void> {
  for (const snapshot of await listSnapshots(shelf, fromId)) await shelf.set(keyOf(toId, snapshot.id), snapshot);
}

function isSnapshot(value: unknown): value is Snapshot {
  if (typeof value !== 'object' || value === null) return false;
  const { version, id, title, takenAt, file } = value as Record<string, unknown>;
  const said = typeof id === 'string' && typeof title === 'string' && typeof takenAt === 'number';
  return version === 1 && said && typeof file === 'object' && file !== null;
}
