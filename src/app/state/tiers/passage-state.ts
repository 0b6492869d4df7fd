import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';

/** What the picture of a passage shows. */
export interface PassageLayers {
  /** The outlines of the chosen keyways. */
  readonly sections: boolean;
  /** The part that all of them share. */
  readonly common: boolean;
  readonly blank: boolean;
  /** What the blank gives up in the keyway that is lit. */
  readonly loss: boolean;
}

/** How the passage is looked at. */
export interface PassageState {
  /** The keyway pointed at, and the one that stays lit when nothing is pointed at. */
  readonly pointed: string | null;
  readonly pinned: string | null;
  readonly layers: PassageLayers;
}

const stores = new WeakMap<Session, Store<PassageState>>();

/** How the passage is looked at in a window. */
export function passageStateOf(session: Session): Store<PassageState> {
  const known = stores.get(session);
  if (known) return known;
  const made = makeStore<PassageState>({
    pointed: null,
    pinned: null,
    layers: { sections: true, common: true, blank: true, loss: true },
  });
  stores.set(session, made);
  return made;
}
