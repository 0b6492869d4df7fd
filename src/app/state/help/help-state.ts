import { makeKeptStore, type Shelf } from '../kept-store.ts';
import { VIEW_NAMES, type ViewName } from '../selection-state.ts';
import type { Store } from '../store.ts';

/** What help stands in the window. Not part of any family. */
export interface HelpState {
  /** The views whose hint has been put away. */
  readonly hintsSeen: readonly ViewName[];
  /** False where no hint is wanted any more. */
  readonly hints: boolean;
  /** The step of the first five minutes, from 0; null where they are not under way. */
  readonly step: number | null;
  /** What lies over the window. */
  readonly open: 'words' | 'keys' | null;
}

const SHELF_KEY = 'sectionary-help';

/** A store that knows which hints were put away on this computer. @check tests/unit/app/help.test.ts */
export function makeHelpStore(shelf: Shelf | null): Store<HelpState> {
  return makeKeptStore<HelpState>(shelf, SHELF_KEY, ({ hintsSeen, hints }) => ({
    hintsSeen: VIEW_NAMES.filter((name) => Array.isArray(hintsSeen) && hintsSeen.includes(name)),
    hints: hints !== false,
    step: null,
    open: null,
  }));
}

/** Puts the hint of a view away; it comes back only when hints are asked for again. */
export function putHintAway(help: Store<HelpState>, view: ViewName): void {
  help.setState(({ hintsSeen }) => ({ hintsSeen: [...new Set([...hintsSeen, view])] }));
}

/** Shows the hints of all views again, or none. */
export function wantHints(help: Store<HelpState>, hints: boolean): void {
  help.setState({ hints, hintsSeen: [] });
}
