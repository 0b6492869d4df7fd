import { type NoticeKey, removeNotice, showNotice } from '../state/notices-state.ts';
import type { Session } from '../state/session.ts';

/** Notices about keeping that stand in each other's place: what holds now is told, what held before is gone. */
const STORE_NOTICE = 'keep-store';
const TAB_NOTICE = 'keep-tab';
const PAST_NOTICE = 'keep-past';

/** What the notices' keys do. */
export interface KeepActions {
  saveFile(): void;
  keepAsCopy(): void;
  takeOver(): void;
}

/** Whether a write failed because the disk or the browser's share of it is full. */
export function isFull(reason: unknown): boolean {
  return reason instanceof DOMException && reason.name === 'QuotaExceededError';
}

/** Tells that the last change was not kept; what was kept before is still there. */
export function tellNotWritten(session: Session, full: boolean, { saveFile }: KeepActions): void {
  const title = full ? 'The browser’s storage is full' : 'The browser did not keep the last change';
  const words =
    'What was kept before is still there, but your latest changes are not. Save the family as a file; ' +
    (full ? 'to make room, delete old families under Recent families.' : 'it is tried again at your next change.');
  warn(session, STORE_NOTICE, title, words, [{ label: 'Save family', press: saveFile }]);
}

/** Tells once that this browser keeps nothing for this page. */
export function tellNoStore(session: Session): void {
  warn(
    session,
    STORE_NOTICE,
    'Nothing is kept in this browser',
    'This window has no storage: it is private, or storage is switched off. All else works. Save the family as a file before you close it.',
    [putAway(session, STORE_NOTICE)],
  );
}

/** Tells that the storage has answered after all, and offers what was kept last. */
export function tellLate(session: Session, name: string, open: () => void): void {
  const openIt = () => {
    removeNotice(session, PAST_NOTICE);
    open();
  };
  showNotice(session, {
    id: PAST_NOTICE,
    tone: 'news',
    title: 'The browser’s storage has answered late',
    words: `From now on changes are kept. What you had open last, ${name}, is there too.`,
    keys: [{ label: 'Open it', press: openIt }, putAway(session, PAST_NOTICE)],
  });
}

/** Tells that another window keeps the family that is open here. */
export function tellElsewhere(session: Session, closed: boolean, { keepAsCopy, takeOver }: KeepActions): void {
  const title = closed ? 'The other tab has been closed' : 'This family is open in another tab';
  const words = closed
    ? 'It kept this family. What you change here is not kept until you take over, or keep it as a copy.'
    : 'What you change here is not kept under it.';
  warn(session, TAB_NOTICE, title, words, [
    { label: 'Keep as a copy', press: keepAsCopy },
    { label: 'Take over here', press: takeOver },
  ]);
}

/** Tells that another window took the family over. */
export function tellTaken(session: Session, { keepAsCopy, takeOver }: KeepActions): void {
  const words = 'All up to that moment is kept there. What you change here from now on is not kept.';
  warn(session, TAB_NOTICE, 'Another tab has taken this family over', words, [
    { label: 'Keep as a copy', press: keepAsCopy },
    { label: 'Take over here', press: takeOver },
  ]);
}

/** Tells that this window's own changes went into a copy when it took the family over. */
export function tellCopied(session: Session): void {
  const words = 'The other tab had changed the family too. Your changes are in a copy under Family, Recent families.';
  showNotice(session, {
    id: PAST_NOTICE,
    tone: 'news',
    title: 'Your changes here are kept as a copy',
    words,
    keys: [putAway(session, PAST_NOTICE)],
  });
}

/** Tells that kept work could not be read, and what is left of it can be saved. */
export function tellUnreadable(session: Session, name: string, why: string, saveRest: () => void): void {
  const words = `${why} It was not touched and stays under Recent families.`;
  warn(session, PAST_NOTICE, `${name} could not be opened as it was kept`, words, [
    { label: 'Save what is there', press: saveRest },
    putAway(session, PAST_NOTICE),
  ]);
}

/** Tells that kept work was opened, but not all of it. */
export function tellPartlyLost(session: Session, what: string): void {
  warn(session, PAST_NOTICE, 'Not all could be opened as it was kept', what, [putAway(session, PAST_NOTICE)]);
}

/** The store took a write: what was told of it no longer holds. */
export function clearStoreNotice(session: Session): void {
  removeNotice(session, STORE_NOTICE);
}

/** The open family is this window's to keep: what was told of other tabs no longer holds. */
export function clearTabNotice(session: Session): void {
  removeNotice(session, TAB_NOTICE);
}

function warn(session: Session, id: string, title: string, words: string, keys: readonly NoticeKey[]): void {
  showNotice(session, { id, tone: 'warning', title, words, keys });
}

function putAway(session: Session, id: string): NoticeKey {
  return { label: 'Put away', press: () => removeNotice(session, id) };
}
