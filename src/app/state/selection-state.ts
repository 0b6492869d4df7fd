import { entrantsOf, type Family, openingsOf } from '../../family/family.ts';
import type { Profile } from '../../profile/profile.ts';
import { makeStore, type Store } from './store.ts';
import { walk } from './walk.ts';

/** The pictures that can fill the middle of the window. */
export const VIEW_NAMES = ['wall', 'compare', 'draw', 'tiers', 'plan', 'gauge', 'names', 'teach', 'publish'] as const;

/** See {@link VIEW_NAMES}. */
export type ViewName = (typeof VIEW_NAMES)[number];

/** Which of the two that are picked was picked last: the blank or tool, or the keyway. */
export type PickedPart = 'entrant' | 'opening';

/** What is picked: one blank or tool, one keyway, one view. */
export interface SelectionState {
  readonly entrantId: string | null;
  readonly openingId: string | null;
  readonly view: ViewName;
  /** The one that the Draw view edits. */
  readonly part: PickedPart;
}

/** Whether a blank and a keyway are picked, which can be compared then. */
export function isPair({ entrantId, openingId }: SelectionState): boolean {
  return entrantId !== null && openingId !== null;
}

/** A store with nothing picked. */
export function makeSelectionStore(): Store<SelectionState> {
  return makeStore<SelectionState>({ entrantId: null, openingId: null, view: 'wall', part: 'entrant' });
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

/** The profile that the Draw view edits: the one picked last, or the other where the family has none of its kind. */
export function editedProfile(family: Family, { entrantId, openingId, part }: SelectionState): Profile | null {
  const byId = (id: string | null) => family.profiles.find((profile) => profile.id === id) ?? null;
  const [first, second] = part === 'entrant' ? [entrantId, openingId] : [openingId, entrantId];
  return byId(first) ?? byId(second);
}

/** Picks one profile, whichever it is. */
export function pickProfile(store: Store<SelectionState>, { id, kind }: Pick<Profile, 'id' | 'kind'>): void {
  store.setState(kind === 'opening' ? { openingId: id, part: 'opening' } : { entrantId: id, part: 'entrant' });
}

/** Picks the blank or tool `steps` places on in the tray. */
export function walkEntrants(store: Store<SelectionState>, family: Family, steps: number): void {
  store.setState((s) => ({
    part: 'entrant',
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
    part: 'opening',
    openingId: walk(
      openingsOf(family).map((p) => p.id),
      s.openingId,
      steps,
    ),
  }));
}
