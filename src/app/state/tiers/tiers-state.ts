import { makeStore, type Store } from '../store.ts';

/** The sheets of the Tiers view: matrix and diagram, what keyways have in common, what is claimed. */
export const TIERS_SHEETS = ['tiers', 'passage', 'claims'] as const;

/** See {@link TIERS_SHEETS}. */
export type TiersSheet = (typeof TIERS_SHEETS)[number];

/** What the Tiers view shows. */
export interface TiersState {
  readonly sheet: TiersSheet;
  /** Ids of the keyways whose common passage is looked at; null for all of them. */
  readonly chosenOpenings: readonly string[] | null;
}

/** A store that shows matrix and diagram. */
export function makeTiersStore(): Store<TiersState> {
  return makeStore<TiersState>({ sheet: 'tiers', chosenOpenings: null });
}
