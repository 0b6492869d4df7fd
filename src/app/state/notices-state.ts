import type { Session } from './session.ts';
import { makeStore, type Store } from './store.ts';

/** A key on a notice. */
export interface NoticeKey {
  readonly label: string;
  readonly press: () => void;
}

/** Something the user has to know, shown until it no longer holds or is put away. */
export interface Notice {
  /** A notice takes the place of another with the same id. */
  readonly id: string;
  readonly tone: 'news' | 'warning';
  readonly title: string;
  readonly words: string;
  readonly keys: readonly NoticeKey[];
}

const notices = new WeakMap<Session, Store<readonly Notice[]>>();

/** The notices of a window, the oldest first. */
export function noticesOf(session: Session): Store<readonly Notice[]> {
  const known = notices.get(session);
  if (known) return known;
  const made = makeStore<readonly Notice[]>([]);
  notices.set(session, made);
  return made;
}

/** Shows a notice, in the place of one with the same id where there is one. */
export function showNotice(session: Session, notice: Notice): void {
  const store = noticesOf(session);
  const others = store.getState().filter(({ id }) => id !== notice.id);
  store.setState([...others, notice], true);
}

/** Takes a notice away, if it is there. */
export function removeNotice(session: Session, id: string): void {
  const store = noticesOf(session);
  if (store.getState().some((notice) => notice.id === id))
    store.setState(
      store.getState().filter((notice) => notice.id !== id),
      true,
    );
}
