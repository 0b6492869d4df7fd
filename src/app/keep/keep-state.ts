import type { Session } from '../state/session.ts';
import { makeStore, type Store } from '../state/store.ts';

/**
 * How it stands with keeping the open family: `off` not kept at all (no store, or not started yet); `untouched` a
 * family that came with the app and was not changed; `writing` and `kept` under way and done; `full` and `failed` the
 * last write was not taken; `elsewhere` another window keeps it; `taken` another window took it from this one.
 */
export type KeepStatus = 'off' | 'untouched' | 'writing' | 'kept' | 'full' | 'failed' | 'elsewhere' | 'taken';

/** What a window knows of its keeping. */
export interface KeepState {
  readonly status: KeepStatus;
  /** The work that the open family is kept under; null where it is not. */
  readonly workId: string | null;
  /** Whether this window changed the family since it is open here. */
  readonly changed: boolean;
  /** How many of the oldest steps of undo were too many to keep. */
  readonly dropped: number;
}

const stores = new WeakMap<Session, Store<KeepState>>();

/** The keeping of a window; `off` where none was started. */
export function keepOf(session: Session): Store<KeepState> {
  const known = stores.get(session);
  if (known) return known;
  const made = makeStore<KeepState>({ status: 'off', workId: null, changed: false, dropped: 0 });
  stores.set(session, made);
  return made;
}

/** Whether nothing of the open family would be lost with the window, saved in a file or not. */
export function isSafe({ status, changed }: KeepState): boolean {
  if (status === 'elsewhere' || status === 'taken') return !changed;
  return status === 'kept' || status === 'writing' || status === 'untouched';
}
