import { createContext, useContext, useSyncExternalStore } from 'react';
import type { Session } from '../state/session.ts';
import type { Store } from '../state/store.ts';

/** The session of the window that a component stands in. */
export const SessionContext = createContext<Session | null>(null);

/** The session round this component; calling it outside of a window is a mistake in the app. */
export function useSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error('This component must stand inside a SessionContext.');
  return session;
}

/**
 * A part of a store's value, kept up to date. `pick` must give the same object for the same value
 * (a field, or a primitive), or the component would draw itself for ever.
 */
export function useStore<T, P>(store: Store<T>, pick: (value: T) => P): P {
  return useSyncExternalStore(store.subscribe, () => pick(store.getState()));
}
