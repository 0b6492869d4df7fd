// The one file that imports idb-keyval.
import { createStore, delMany, get, getMany, keys, set, update } from 'idb-keyval';

/** Where records are kept under names. Every operation is whole or has not happened; all reject where they fail. */
export interface KeepShelf {
  get(key: string): Promise<unknown>;
  getMany(keys: readonly string[]): Promise<unknown[]>;
  set(key: string, value: unknown): Promise<void>;
  /** Reads a record and writes what `change` makes of it, with nobody in between. */
  update(key: string, change: (old: unknown) => unknown): Promise<void>;
  remove(keys: readonly string[]): Promise<void>;
  keys(): Promise<string[]>;
}

/** The browser's own database, IndexedDB. Opened when first asked. */
export function browserKeepShelf(): KeepShelf {
  const store = createStore('sectionary', 'keep');
  return {
    get: (key) => get(key, store),
    getMany: (names) => getMany([...names], store),
    set: (key, value) => set(key, value, store),
    update: (key, change) => update(key, change, store),
    remove: (names) => delMany([...names], store),
    keys: async () => (await keys(store)).filter((key) => typeof key === 'string'),
  };
}
