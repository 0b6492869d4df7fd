import type { FamilyDocument } from '../../../interchange/json/read.ts';
import { makeStore, type Store } from '../store.ts';

/** The sheets of the Names view: the question line, the register, names that mislead, an unknown outline. */
export const NAMES_SHEETS = ['ask', 'register', 'misleading', 'identify'] as const;

/** See {@link NAMES_SHEETS}. */
export type NamesSheet = (typeof NAMES_SHEETS)[number];

/** What the rows of the register can be ordered by. */
export const NAME_COLUMNS = ['text', 'kind', 'stands', 'scheme', 'chambers', 'supersededBy', 'source'] as const;

/** See {@link NAME_COLUMNS}. */
export type NameColumn = (typeof NAME_COLUMNS)[number];

/** Which rows of the register are shown, and in which order. */
export interface RegisterLook {
  /** What a row must hold somewhere; every row where empty. */
  readonly search: string;
  /** What is left out besides. `gone`: only entries whose section or profile the family has no longer. */
  readonly only: 'all' | 'own' | 'register' | 'gone';
  /** Null: the register of the file in its order, then profiles in chart order, then sections. */
  readonly sort: { readonly column: NameColumn; readonly falling: boolean } | null;
  /** Key of the chosen row (`name-rows.ts`). */
  readonly chosen: string | null;
}

/** What was done to names last, and the document that it left: as long as that one is open it can be undone here. */
export interface NamesDone {
  readonly words: string;
  readonly document: FamilyDocument;
}

/** What the Names view shows. */
export interface NamesState {
  readonly sheet: NamesSheet;
  /** What stands in the question line. */
  readonly question: string;
  /** The question whose answer is shown; empty before the first. */
  readonly asked: string;
  /** Questions asked in this window, the latest first. */
  readonly recent: readonly string[];
  readonly look: RegisterLook;
  readonly done: NamesDone | null;
}

const ALL_ROWS: RegisterLook = { search: '', only: 'all', sort: null, chosen: null };

/** What belongs to one family and is forgotten with it. */
export const NOTHING_ASKED = { question: '', asked: '', look: ALL_ROWS, done: null } as const;

/** A store that shows the question line. */
export function makeNamesStore(): Store<NamesState> {
  return makeStore<NamesState>({ ...NOTHING_ASKED, sheet: 'ask', recent: [] });
}
