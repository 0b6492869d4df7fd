import type { Fit, Placement } from '../../fit/fit.ts';
import type { Point } from '../../geom/point.ts';
import { makeStore, type Store } from './store.ts';

/** Where the blank was put by hand in Compare; null while it lies in its best placement. */
export interface HandState {
  readonly placement: Placement | null;
}

/** A store in which nothing has been moved by hand. */
export function makeHandStore(): Store<HandState> {
  return makeStore<HandState>({ placement: null });
}

/** The placement that Compare shows: by hand where there is one, else the best. */
export function shownPlacement(hand: HandState, fit: Fit | undefined): Placement {
  return hand.placement ?? fit?.placement ?? { x: 0, y: 0, tilt: 0 };
}

/** Puts the blank where it is shown now, moved by `by` (nanometres). */
export function moveByHand(store: Store<HandState>, fit: Fit | undefined, by: Point): void {
  store.setState((hand) => {
    const from = shownPlacement(hand, fit);
    return { placement: { ...from, x: from.x + by.x, y: from.y + by.y } };
  });
}

/** Lays the blank back in its best placement. */
export function snapToBest(store: Store<HandState>): void {
  store.setState({ placement: null });
}
