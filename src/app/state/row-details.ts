import type { ThreeWay } from '../../fit/judge-tolerance.ts';
import type { WearFigures } from '../../jobs/judge-details.ts';
import { makeStore, type Store } from './store.ts';

/** What is told of the picked blank or tool besides its fits, by opening id, as far as it is known. */
export interface RowDetails {
  readonly threeWay: ReadonlyMap<string, ThreeWay>;
  readonly wear: ReadonlyMap<string, WearFigures>;
  /** Why the figures could not be had, in plain words; empty otherwise. */
  readonly trouble: string;
}

const NOTHING: RowDetails = { threeWay: new Map(), wear: new Map(), trouble: '' };

/** A store in which nothing is told. */
export function makeDetailsStore(): Store<RowDetails> {
  return makeStore(NOTHING);
}
