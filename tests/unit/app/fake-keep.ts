import type { KeepParts } from '../../../src/app/keep/keeping.ts';
import type { KeepShelf } from '../../../src/app/keep/shelf.ts';
import { startKeeping } from '../../../src/app/keep/start-keeping.ts';
import type { Hold, TabMessage, Tabs } from '../../../src/app/keep/tabs.ts';
import type { Pace } from '../../../src/app/state/pace.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { fakeDoors, turn } from './fake-doors.ts';

/** A shelf in memory that can be made to fail; what is on it is copied in and out, as a database does. */
export class FakeShelf implements KeepShelf {
  readonly records = new Map<string, unknown>();
  /** Thrown by every write while it is set. */
  trouble: Error | null = null;
  /** Stops before this many more writes, as a crash does; null never. */
  writesLeft: number | null = null;
  writes = 0;
  /** Where it is a list, every write waits in it to be let go. */
  waiting: (() => void)[] | null = null;
  /** Answers nothing before this has come. */
  ready: Promise<void> = Promise.resolve();

  /** Called once, before the next record is read by itself. */
  beforeRecord: (() => void) | null = null;

  async get(key: string): Promise<unknown> {
    const { beforeRecord } = this;
    this.beforeRecord = null;
    beforeRecord?.();
    return structuredClone(this.records.get(key));
  }
  async getMany(keys: readonly string[]): Promise<unknown[]> {
    return keys.map((key) => structuredClone(this.records.get(key)));
  }
  async set(key: string, value: unknown): Promise<void> {
    await this.mayWrite();
    this.records.set(key, structuredClone(value));
  }
  async update(key: string, change: (old: unknown) => unknown): Promise<void> {
    await this.mayWrite();
    this.records.set(key, structuredClone(change(structuredClone(this.records.get(key)))));
  }
  async remove(keys: readonly string[]): Promise<void> {
    for (const key of keys) this.records.delete(key);
  }
  async keys(): Promise<string[]> {
    await this.ready;
    return [...this.records.keys()];
  }

  private async mayWrite(): Promise<void> {
    const { waiting } = this;
    if (waiting) await new Promise<void>((go) => waiting.push(go));
    if (this.trouble) throw this.trouble;
    if (this.writesLeft === 0) await new Promise(() => {});
    if (this.writesLeft !== null) this.writesLeft--;
    this.writes++;
  }
}

interface Asked {
  grant(): void;
  stop(): void;
}

/** The windows of one browser: who has which right, who waits for it. */
export class FakeBrowser {
  private readonly holders = new Map<string, { lose(): void }>();
  private readonly waiting = new Map<string, Asked[]>();
  private readonly listeners = new Set<(message: TabMessage) => void>();
  /** Windows that hear nothing any more. */
  deaf = false;

  tabs(): Tabs {
    return {
      knowsOthers: true,
      hold: (id, waitMs) => this.ask(id, waitMs),
      seize: async (id) => {
        this.holders.get(id)?.lose();
        this.holders.delete(id);
        return this.take(id);
      },
      held: async () => new Set(this.holders.keys()),
      send: (message) => {
        if (!this.deaf) for (const listener of this.listeners) queueMicrotask(() => listener(message));
      },
      listen: (listener) => this.listeners.add(listener),
    };
  }

  /** What the browser does with a window's rights when it is closed. */
  free(id: string): void {
    this.holders.delete(id);
    this.waiting.get(id)?.shift()?.grant();
  }

  private ask(id: string, waitMs: number): Promise<Hold | null> {
    if (!this.holders.has(id)) return Promise.resolve(this.take(id));
    return new Promise((resolve) => {
      const queue = this.waiting.get(id) ?? [];
      this.waiting.set(id, queue);
      const asked: Asked = { grant: () => resolve(this.take(id)), stop: () => resolve(null) };
      queue.push(asked);
      // Nobody here takes that long: a wait that ends does so at once.
      if (waitMs < 10_000) {
        queue.splice(queue.indexOf(asked), 1);
        asked.stop();
      }
    });
  }

  private take(id: string): Hold {
    let lose = () => {};
    const lost = new Promise<void>((done) => {
      lose = done;
    });
    const holder = { lose };
    this.holders.set(id, holder);
    const release = () => {
      if (this.holders.get(id) === holder) this.free(id);
    };
    return { lost, release };
  }
}

/** One window on a shelf: its session, its keeping's parts, and the memory that a reload leaves it. */
export interface FakeWindow {
  readonly session: Session;
  readonly saved: string[];
  /** Lets timers come that the window waits for. */
  calm(): void;
}

let ids = 0;
let clock = 1_000;

/** A memory of one tab. */
export function tabMemory(): Pick<Storage, 'getItem' | 'setItem'> {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}

interface WindowOptions {
  readonly memory?: KeepParts['memory'];
  readonly fragment?: string;
}

/** Opens a window as the app does, with the given address, and lets it come to rest. */
export async function openWindow(
  shelf: KeepShelf,
  browser: FakeBrowser,
  options: WindowOptions = {},
): Promise<FakeWindow> {
  const { window, started } = beginWindow(shelf, browser, options);
  await started;
  await quiet();
  return window;
}

/** A window that is being opened: its shelf may not have answered yet. */
export function beginWindow(
  shelf: KeepShelf,
  browser: FakeBrowser,
  { memory = tabMemory(), fragment = '' }: WindowOptions = {},
): { readonly window: FakeWindow; readonly started: Promise<void> } {
  const fake = fakeDoors();
  const timers = new Set<() => void>();
  const pace: Pace = {
    frame: fake.doors.pace.frame,
    later: (_ms, run) => {
      timers.add(run);
      return () => timers.delete(run);
    },
  };
  const session = makeSession({ ...fake.doors, pace }, null);
  const saved: string[] = [];
  const parts: KeepParts = {
    shelf,
    tabs: browser.tabs(),
    memory,
    freshId: () => `id${ids++}`,
    now: () => clock++,
    saveFile: () => saved.push('family'),
    saveText: (text) => saved.push(text),
  };
  const started = startKeeping(session, parts, fragment);
  const calm = () => {
    const due = [...timers];
    timers.clear();
    for (const run of due) run();
  };
  return { window: { session, saved, calm }, started };
}

/** Lets everything that is on its way come to rest. */
export async function quiet(): Promise<void> {
  for (let i = 0; i < 6; i++) await turn();
}
