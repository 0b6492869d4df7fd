import type { Explanation } from '../../../fit/explain-placement.ts';
import { type WardAnswer, wardByWard } from '../../../passage/ward-by-ward.ts';
import type { Session } from '../../state/session.ts';
import { makeStore, type Store } from '../../state/store.ts';
import type { ShownPair } from '../use-pair.ts';

/** Which ward of the list is lit in the drawing, by its number; null for none. */
export interface WardState {
  readonly lit: number | null;
}

const stores = new WeakMap<Session, Store<WardState>>();

/** The lit ward of a window: drawing and readings share it. */
export function wardsOf(session: Session): Store<WardState> {
  const known = stores.get(session);
  if (known) return known;
  const made = makeStore<WardState>({ lit: null });
  stores.set(session, made);
  return made;
}

const answers = new WeakMap<Explanation, readonly WardAnswer[]>();

/** The wards of the keyway at the placement that is shown; found once for each. */
export function shownWards({ shapes, placement, explanation }: ShownPair): readonly WardAnswer[] {
  const known = answers.get(explanation);
  if (known) return known;
  const found = wardByWard(shapes.opening, shapes.entrant, placement, explanation.collisions);
  answers.set(explanation, found);
  return found;
}
