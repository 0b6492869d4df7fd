import type { Units } from './length-text.ts';
import { listenTo, makeStore, type Store } from './store.ts';

/** Light or dark as chosen by hand; "system" follows the computer. */
export type ThemeChoice = 'system' | 'light' | 'dark';

/** How the user likes things shown. Not part of any family. */
export interface SettingsState {
  readonly units: Units;
  readonly theme: ThemeChoice;
}

/** Where settings are kept between visits; the browser's localStorage in the app. */
export interface Shelf {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

const SHELF_KEY = 'sectionary-settings';
const DEFAULTS: SettingsState = { units: 'mm', theme: 'system' };

/**
 * A settings store that starts with what the shelf holds and writes every change back. A shelf that is
 * full, forbidden or holds nonsense costs the memory of the settings and nothing else.
 */
export function makeSettingsStore(shelf: Shelf | null): Store<SettingsState> {
  const store = makeStore(readShelf(shelf));
  listenTo(
    store,
    (s) => s,
    (now) => writeShelf(shelf, now),
  );
  return store;
}

function readShelf(shelf: Shelf | null): SettingsState {
  try {
    const kept: unknown = JSON.parse(shelf?.getItem(SHELF_KEY) ?? 'null');
    if (typeof kept !== 'object' || kept === null) return DEFAULTS;
    const { units, theme } = kept as Record<string, unknown>;
    return {
      units: units === 'in' ? 'in' : 'mm',
      theme: theme === 'light' || theme === 'dark' ? theme : 'system',
    };
  } catch {
    return DEFAULTS;
  }
}

function writeShelf(shelf: Shelf | null, settings: SettingsState): void {
  try {
    shelf?.setItem(SHELF_KEY, JSON.stringify(settings));
  } catch {
    // A private window or a full disk: the choice holds for this visit only.
  }
}
