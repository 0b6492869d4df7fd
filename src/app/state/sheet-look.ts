import type { DocumentState } from './document-state.ts';
import type { Session } from './session.ts';
import { listenTo, makeStore, type Store } from './store.ts';

/** What of a look no longer holds once something of the open document changes, by undo for one. */
export interface PassingLook<Look> {
  /** The look without it; null where there is none of it. */
  without(look: Look): Partial<Look> | null;
  /** What must change; the document where not given. */
  of?(state: DocumentState): unknown;
}

/**
 * What is looked at and typed on one sheet of a window: a store for each session, begun anew with another family.
 *
 * @param nothing what it begins with.
 */
export function makeSheetLook<Look extends object>(
  nothing: Look,
  { without, of = (state) => state.document }: PassingLook<Look>,
): (session: Session) => Store<Look> {
  const stores = new WeakMap<Session, Store<Look>>();
  return (session) => {
    const known = stores.get(session);
    if (known) return known;
    const made = makeStore<Look>(nothing);
    listenTo(
      session.documents,
      (s) => s.opened,
      () => made.setState(nothing),
    );
    listenTo(session.documents, of, () => {
      const left = without(made.getState());
      if (left) made.setState(left);
    });
    stores.set(session, made);
    return made;
  };
}

/** What was said of an edit is no longer so once it is undone; an edit of a sheet says its word after it. */
export function withoutWords(look: { readonly said: string }): { said: string } | null {
  return look.said === '' ? null : { said: '' };
}
