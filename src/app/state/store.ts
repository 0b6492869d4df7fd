// The one file that imports zustand: stores without React, so that state can be read and tested anywhere.
import { createStore, type StoreApi } from 'zustand/vanilla';

/** A value that can be read, replaced in part, and listened to. */
export type Store<T> = StoreApi<T>;

/** Makes a store that starts with `initial`. */
export function makeStore<T>(initial: T): Store<T> {
  return createStore<T>(() => initial);
}

/** Calls `listener` with the new and the old pick whenever `pick` of the store's value changes; returns how to stop. */
export function listenTo<T, P>(
  store: Store<T>,
  pick: (value: T) => P,
  listener: (now: P, before: P) => void,
): () => void {
  return store.subscribe((value, old) => {
    const now = pick(value);
    const before = pick(old);
    if (!Object.is(now, before)) listener(now, before);
  });
}
