import type { Units } from '../../family/length-text.ts';
import { makeKeptStore, type Shelf } from './kept-store.ts';
import type { Store } from './store.ts';

/** Light or dark as chosen by hand; "system" follows the computer. */
export type ThemeChoice = 'system' | 'light' | 'dark';

/** How the user likes things shown. Not part of any family. */
export interface SettingsState {
  readonly units: Units;
  readonly theme: ThemeChoice;
}

const SHELF_KEY = 'sectionary-settings';

/**
 * A settings store that starts with what the shelf holds and writes every change back. A shelf that is
 * full, forbidden or holds nonsense costs the memory of the settings and nothing else.
 */
export function makeSettingsStore(shelf: Shelf | null): Store<SettingsState> {
  return makeKeptStore(shelf, SHELF_KEY, ({ units, theme }) => ({
    units: units === 'in' ? 'in' : 'mm',
    theme: theme === 'light' || theme === 'dark' ? theme : 'system',
  }));
}
