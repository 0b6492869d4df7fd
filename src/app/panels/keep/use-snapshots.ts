import { useCallback, useEffect, useState } from 'react';
import { isFull } from '../../keep/keep-notices.ts';
import { keepOf } from '../../keep/keep-state.ts';
import { listSnapshots, removeSnapshot, renameSnapshot, type Snapshot, takeSnapshot } from '../../keep/snapshots.ts';
import { keepingOf } from '../../keep/start-keeping.ts';
import { commitFamily } from '../../state/edit-document.ts';
import type { Session } from '../../state/session.ts';
import { useSession, useStore } from '../use-store.ts';

/** Something that was deleted and can be put back. */
export interface Deleted {
  readonly name: string;
  putBack(): Promise<void>;
}

/** The snapshots of the open family and what can be done with them. */
export interface Snapshots {
  readonly all: readonly Snapshot[];
  /** Why the last thing was not done; empty where it was. */
  readonly fault: string;
  readonly deleted: Deleted | null;
  take(title: string): Promise<void>;
  rename(snapshot: Snapshot, title: string): Promise<void>;
  remove(snapshot: Snapshot): Promise<void>;
  putBack(): Promise<void>;
  /** Makes the family what it was, as one step of undo; returns whether it is. */
  restore(snapshot: Snapshot): boolean;
}

/** Reads the snapshots of the open family and keeps up with what is done to them here. */
export function useSnapshots(): Snapshots {
  const session = useSession();
  const workId = useStore(keepOf(session), (s) => s.workId);
  const shelf = keepingOf(session)?.parts.shelf ?? null;
  const [all, setAll] = useState<readonly Snapshot[]>([]);
  const [fault, setFault] = useState('');
  const [deleted, setDeleted] = useState<Deleted | null>(null);
  // The work is looked up each time: the first snapshot of a family that came with the app makes it one.
  const refresh = useCallback(async () => {
    const id = keepOf(session).getState().workId;
    if (shelf && id) setAll(await listSnapshots(shelf, id));
  }, [shelf, session]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another work has other snapshots
  useEffect(() => {
    refresh().catch(() => setFault('The snapshots cannot be read.'));
  }, [refresh, workId]);
  const attempt = async (work: () => Promise<unknown>) => {
    try {
      await work();
      setFault('');
      await refresh();
    } catch (reason) {
      setFault(isFull(reason) ? 'The browser’s storage is full: nothing was changed.' : 'The browser did not keep it.');
    }
  };
  const onShelf = (work: (on: NonNullable<typeof shelf>, id: string) => Promise<unknown>) =>
    attempt(async () => shelf && workId && work(shelf, workId));
  return {
    all,
    fault,
    deleted,
    take: (title) => attempt(() => takeNow(session, title)),
    rename: ({ id }, title) => onShelf((on, work) => renameSnapshot(on, work, id, title)),
    remove: ({ id, title }) =>
      onShelf(async (on, work) => setDeleted({ name: title, putBack: await removeSnapshot(on, work, id) })),
    putBack: () => attempt(async () => deleted?.putBack()).then(() => setDeleted(null)),
    restore: ({ file }) => {
      const faults = commitFamily(session.documents, session.doors, file);
      if (faults) setFault(`It cannot be restored: ${faults[0].path} ${faults[0].what}.`);
      return faults === null;
    },
  };
}

/** Keeps the family as it is; one that came with the app is first made a work of its own. */
async function takeNow(session: Session, title: string): Promise<void> {
  const keeping = keepingOf(session);
  const file = session.documents.getState().document?.file;
  if (!keeping || !file) return;
  const workId = await keeping.ownWork();
  const { shelf, freshId, now } = keeping.parts;
  await takeSnapshot(shelf, workId, { id: freshId(), title, takenAt: now(), file });
}
