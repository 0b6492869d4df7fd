import { listenTo, makeStore, type Store } from './store.ts';

/** Where small things are kept between visits; the browser's localStorage in the app. */
export interface Shelf {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

/**
 * A store that starts with what the shelf holds and writes every change back. A shelf that is full, forbidden or holds
 * nonsense costs the memory and nothing else.
 *
 * @param read makes the value of the fields that the shelf holds; of none where it holds nothing sound.
 * @check tests/unit/app/session.test.ts, tests/unit/app/quiz-score.test.ts
 */
export function makeKeptStore<T>(
  shelf: Shelf | null,
  key: string,
  read: (fields: Readonly<Record<string, unknown>>) => T,
): Store<T> {
  const store = makeStore(read(keptFields(shelf, key)));
  listenTo(
    store,
    (value) => value,
    (now) => keepOn(shelf, key, now),
  );
  return store;
}

/**
 * Lets some fields of a store begin with what the shelf holds, and writes them back whenever one of them changes.
 *
 * @param read makes the value of each field of what the shelf holds; undefined where that is not sound, so that the
 * field begins as it does without a shelf.
 * @check tests/unit/app/kept-looks.test.ts
 */
export function keepFields<T extends object, Name extends string & keyof T>(
  store: Store<T>,
  shelf: Shelf | null,
  key: string,
  read: { readonly [Field in Name]: (kept: unknown) => T[Field] | undefined },
): void {
  const names = Object.keys(read) as Name[];
  const kept = keptFields(shelf, key);
  const sound = names.map((name) => [name, read[name](kept[name])]).filter(([, value]) => value !== undefined);
  store.setState(Object.fromEntries(sound));
  store.subscribe((now, before) => {
    if (names.every((name) => Object.is(now[name], before[name]))) return;
    keepOn(shelf, key, Object.fromEntries(names.map((name) => [name, now[name]])));
  });
}

/** Reads one of some known values. */
export function oneOf<T>(known: readonly T[]): (kept: unknown) => T | undefined {
  return (kept) => known.find((one) => one === kept);
}

/** Reads a yes or no. */
export function yesOrNo(kept: unknown): boolean | undefined {
  return typeof kept === 'boolean' ? kept : undefined;
}

/** What the shelf holds under a key at this moment; no fields where that is nothing or nonsense. */
export function keptFields(shelf: Shelf | null, key: string): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(shelf?.getItem(key) ?? 'null');
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

/** Writes a value to the shelf; one that is full or forbidden costs the memory and nothing else. */
export function keepOn(shelf: Shelf | null, key: string, value: unknown): void {
  try {
    // A number that JSON cannot write is not kept.
    shelf?.setItem(
      key,
      JSON.stringify(value, (_name, part) => (typeof part === 'bigint' ? null : part)),
    );
  } catch {
    // A private window or a full disk: the value holds for this visit only.
  }
}
