import { type Family, openingsOf } from '../../../family/family.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { PassageInput } from '../../../passage/find-passage.ts';
import type { Session } from '../session.ts';

/** The ids of the chosen keyways in chart order; `null` means all. Ids that the family has no more are left out. */
export function chosenIds(family: Family, chosen: readonly string[] | null): string[] {
  const ids = openingsOf(family).map(({ id }) => id);
  if (chosen === null) return ids;
  const wanted = new Set(chosen);
  return ids.filter((id) => wanted.has(id));
}

/** What the search is asked for a family and a choice. */
export function passageInput(family: Family, chosen: readonly string[]): PassageInput {
  const openings = openingsOf(family).map(({ id, ring }) => ({ id, ring }));
  return { openings, chosen, runningClearance: family.runningClearance };
}

/** Chooses these keyways; all of them is told as `null`, so that keyways that are added belong to it. */
export function chooseOpenings({ tiers }: Session, family: Family, ids: readonly string[]): void {
  const chosen = chosenIds(family, ids);
  tiers.setState({ chosenOpenings: chosen.length === openingsOf(family).length ? null : chosen });
}

/** Adds a keyway to the choice, or takes it out. */
export function toggleOpening(session: Session, family: Family, id: string): void {
  const now = chosenIds(family, session.tiers.getState().chosenOpenings);
  chooseOpenings(session, family, now.includes(id) ? now.filter((one) => one !== id) : [...now, id]);
}

/** The keyways that a row of fits says the blank goes into, tight ones too. */
export function enteredIds(row: ReadonlyMap<string, Fit>): string[] {
  return [...row].filter(([, { verdict }]) => verdict !== 'blocked').map(([id]) => id);
}
