import type { Hold, TabMessage, Tabs } from './tabs.ts';

const LOCK = 'sectionary-work/';

/**
 * Windows tied by the browser's own locks and channel. Where a browser has no locks every window gets the right it
 * asks for: the name of the writer in each record then keeps two of them apart.
 */
export function browserTabs(): Tabs {
  const channel = typeof BroadcastChannel === 'function' ? new BroadcastChannel('sectionary-keep') : null;
  return {
    knowsOthers: navigator.locks !== undefined,
    // Whether it is free is answered without a clock: a busy machine must not make it look taken.
    hold: async (id, waitMs) =>
      (await requestLock(id, { ifAvailable: true })) ?? requestLock(id, { signal: AbortSignal.timeout(waitMs) }),
    seize: async (id) => (await requestLock(id, { steal: true })) ?? FREE,
    held: heldWorks,
    send: (message) => channel?.postMessage(message),
    listen: (listener) => channel?.addEventListener('message', ({ data }) => isMessage(data) && listener(data)),
  };
}

const FREE: Hold = { release: () => {}, lost: new Promise(() => {}) };

function requestLock(id: string, options: LockOptions): Promise<Hold | null> {
  const locks: LockManager | undefined = navigator.locks;
  if (!locks) return Promise.resolve(FREE);
  return new Promise((resolve) => {
    let release = () => {};
    let lose = () => {};
    const lost = new Promise<void>((done) => {
      lose = done;
    });
    const held = new Promise<void>((done) => {
      release = done;
    });
    const hold = (lock: Lock | null) => {
      resolve(lock && { release, lost });
      return lock ? held : undefined;
    };
    // Rejects where the wait is over or, later, where the right was taken away.
    locks.request(LOCK + id, options, hold).catch(() => {
      resolve(null);
      lose();
    });
  });
}

async function heldWorks(): Promise<ReadonlySet<string>> {
  const locks: LockManager | undefined = navigator.locks;
  const { held = [] } = (await locks?.query()) ?? {};
  return new Set(held.flatMap(({ name }) => (name?.startsWith(LOCK) ? [name.slice(LOCK.length)] : [])));
}

function isMessage(data: unknown): data is TabMessage {
  return typeof data === 'object' && data !== null && 'ask' in data && data.ask === 'hand-over' && 'id' in data;
}
