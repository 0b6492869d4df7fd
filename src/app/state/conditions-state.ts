import { bandsOf, type Family } from '../../family/family.ts';
import type { Conditions } from '../../fit/conditions.ts';
import type { Bands } from '../../fit/judge-tolerance.ts';
import type { Profile } from '../../profile/profile.ts';
import { makeStore, type Store } from './store.ts';

/** What the wall says of each pair: its margin, the wear that would undo a "blocked", or the answer for all parts in their bands. */
export const TELLINGS = ['margin', 'guard', 'parts'] as const;

/** See {@link TELLINGS}. */
export type Telling = (typeof TELLINGS)[number];

/** Under what conditions the pairs are judged and what is told of them; a setting of the window, not of the file. */
export interface ConditionsState {
  /** Radians either way; 0 is upright. */
  readonly tiltLimit: number;
  /** Nanometres off the blank and off the keyway. */
  readonly wear: number;
  /** Nanometres to either side; null where the file's tolerance holds. */
  readonly blankTolerance: number | null;
  readonly openingTolerance: number | null;
  readonly telling: Telling;
}

/** New parts, upright, tolerances of the file: what a family is opened with. */
export const AS_DRAWN: Omit<ConditionsState, 'telling'> = {
  tiltLimit: 0,
  wear: 0,
  blankTolerance: null,
  openingTolerance: null,
};

/** A store in which pairs are judged as drawn and margins told. */
export function makeConditionsStore(): Store<ConditionsState> {
  return makeStore<ConditionsState>({ ...AS_DRAWN, telling: 'margin' });
}

/** The core's conditions for a family. */
export function conditionsFor(
  { tiltLimit, wear }: Pick<ConditionsState, 'tiltLimit' | 'wear'>,
  { runningClearance }: Family,
): Conditions {
  return { runningClearance, tiltLimit, wear };
}

/** The tolerance bands of a pair: as set here, else as the file says. */
export function bandsFor(state: ConditionsState, family: Family, entrant: Profile, opening: Profile): Bands {
  const file = bandsOf(family, entrant, opening);
  return { blank: state.blankTolerance ?? file.blank, opening: state.openingTolerance ?? file.opening };
}

/** Whether pairs are judged otherwise than new and upright, so that a view must say so. */
export function isAltered({ tiltLimit, wear }: ConditionsState): boolean {
  return tiltLimit > 0 || wear > 0;
}
