import { isLink } from '../../interchange/link/link-form.ts';
import type { Session } from '../state/session.ts';
import { clearStoreNotice, tellLate, tellNoStore } from './keep-notices.ts';
import { Keeping, type KeepParts, WAIT_MS } from './keeping.ts';
import { openLink } from './open-link.ts';
import { listWorks, type WorkHead } from './work-records.ts';

/** A browser whose storage says nothing for so long is taken to have none, until it says something after all. */
const PATIENCE_MS = 3_000;

const keepings = new WeakMap<Session, Keeping>();

/** The keeping of a window; null where the browser keeps nothing. */
export function keepingOf(session: Session): Keeping | null {
  return keepings.get(session) ?? null;
}

/**
 * Opens what the window begins with, then keeps it. A link in the address goes first, then what this tab showed before
 * it was loaded again, then the family that was kept last, then the demo family. Storage that answers late, as on a busy
 * machine, is taken up when it does: what is open then is kept, what was kept last is offered.
 *
 * @param fragment of the address.
 * @check tests/browser/keep-reload.test.ts, tests/unit/app/keeping.test.ts
 */
export async function startKeeping(session: Session, parts: KeepParts, fragment: string): Promise<void> {
  const { documents } = session;
  const keeping = new Keeping(session, parts);
  documents.setState({ reading: true });
  const asked = listWorks(parts.shelf).catch(() => null);
  const works = await inTime(asked, session);
  // A file that was dropped meanwhile, or a link, goes before anything kept.
  const isOpen = () => documents.getState().opened > 0;
  if (!isOpen() && isLink(fragment)) openLink(session, fragment);
  const { refusal } = documents.getState();
  if (!isOpen() && works) await openKept(keeping, works, () => !isOpen());
  if (!isOpen()) keeping.openSample('');
  // Why a link was refused is still told when something else is open.
  if (refusal) documents.setState({ refusal });
  if (!works) {
    tellNoStore(session);
    const late = await asked;
    if (!late) return;
    clearStoreNotice(session);
    const head = keptBefore(keeping, late);
    // Not opened by itself: somebody may be in the middle of something.
    if (head) tellLate(session, head.name, () => void keeping.open(head));
  }
  keepings.set(session, keeping);
  keeping.follow();
}

async function openKept(keeping: Keeping, works: readonly WorkHead[], isWanted: () => boolean): Promise<void> {
  const before = keeping.remembered();
  const head = keptBefore(keeping, works);
  if (!head) keeping.openSample(before?.id ?? '');
  else await keeping.open(head, head.id === before?.id ? WAIT_MS.reload : WAIT_MS.another, isWanted);
}

/** The work that this tab showed before, else the one that was kept last; null where it showed a family of the app. */
function keptBefore(keeping: Keeping, works: readonly WorkHead[]): WorkHead | null {
  const before = keeping.remembered();
  if (before?.kind === 'sample') return null;
  return works.find(({ id }) => id === before?.id) ?? works[0] ?? null;
}

/** What a promise brings; null where it takes longer than anybody would wait for. */
function inTime<T>(promise: Promise<T>, { doors }: Session): Promise<T | null> {
  return new Promise((resolve) => {
    const stop = doors.pace.later(PATIENCE_MS, () => resolve(null));
    promise.then(resolve).finally(stop);
  });
}
