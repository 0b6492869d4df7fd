import type { Session } from '../session.ts';
import { listenTo, makeStore, type Store } from '../store.ts';

/** What of a plan's blade is looked at. */
export interface BladeLook {
  /** The picked ward site by its place in the layout, lowest first. */
  readonly site: number;
  /** A value that was not taken: its field, and why. */
  readonly refused: { readonly field: string; readonly words: string } | null;
}

const NOTHING: BladeLook = { site: 0, refused: null };

const stores = new WeakMap<Session, Store<BladeLook>>();

/** What is looked at on the blade sheet of a window; begun anew with another family. */
export function bladeLookOf(session: Session): Store<BladeLook> {
  const known = stores.get(session);
  if (known) return known;
  const made = makeStore<BladeLook>(NOTHING);
  listenTo(
    session.documents,
    (s) => s.opened,
    () => made.setState(NOTHING),
  );
  listenTo(
    session.documents,
    (s) => s.document,
    () => made.getState().refused && made.setState({ refused: null }),
  );
  stores.set(session, made);
  return made;
}
