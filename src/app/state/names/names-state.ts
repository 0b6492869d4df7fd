import { makeStore, type Store } from '../store.ts';

/** The sheets of the Names view: the question line, the register, names that mislead, an unknown outline. */
export const NAMES_SHEETS = ['ask', 'register', 'misleading', 'identify'] as const;

/** See {@link NAMES_SHEETS}. */
export type NamesSheet = (typeof NAMES_SHEETS)[number];

/** What the Names view shows. */
export interface NamesState {
  readonly sheet: NamesSheet;
  /** What stands in the question line. */
  readonly question: string;
}

/** A store that shows the question line. */
export function makeNamesStore(): Store<NamesState> {
  return makeStore<NamesState>({ sheet: 'ask', question: '' });
}
