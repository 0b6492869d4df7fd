import { entrantsOf, type Family, openingsOf } from '../../family/family.ts';
import type { Profile } from '../../profile/profile.ts';
import { makeStore, type Store } from './store.ts';
import { walk } from './walk.ts';

/** Which picture fills the middle of the window. */
export type ViewName = 'wall' | 'compare';

/** What is picked: one blank or tool, one keyway, one view. */
export interface SelectionState {
  readonly entrantId: string | null;
  readonly openingId: string | null;
  readonly view: ViewName;
}

/** A store with nothing picked. */
export function makeSelectionStore(): Store<SelectionState> {
  return makeStore<SelectionState>({ entrantId: null, openingId: null, view: 'wall' });
}

/** Keeps what is picked where the family still has it, and picks the first of the chart where it has not. */
export function settleSelection(store: Store<SelectionState>, family: Family): void {
  const { entrantId, openingId } = store.getState();
  store.setState({
    entrantId: keptOrFirst(entrantsOf(family), entrantId),
    openingId: keptOrFirst(openingsOf(family), openingId),
  });
}

function keptOrFirst(profiles: readonly Profile[], id: string | null): string | null {
  if (profiles.some((p) => p.id === id)) return id;
  return profiles.length > 0 ? profiles[0].id : null;
}

/** Picks the blank or tool `steps` places on in the tray. */
export function walkEntrants(store: Store<SelectionState>, family: Family, steps: number): void {
  store.setState((s) => ({
    entrantId: walk(
      entrantsOf(family).map((p) => p.id),
      s.entrantId,
      steps,
    ),
  }));
}

/** Picks the keyway `steps` places on along the block. */
export function walkOpenings(store: Store<SelectionState>, family: Family, steps: number): void {
  store.setState((s) => ({
    openingId: walk(
      openingsOf(family).map((p) => p.id),
      s.openingId,
      steps,
    ),
  }));
}
