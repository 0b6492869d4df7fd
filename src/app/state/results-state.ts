import type { KnownFits } from '../../family/known-fits.ts';
import { makeStore, type Store } from './store.ts';

/**
 * How far the judging of the family has come: first every pair gets its verdict ("judging"), then what is blocked gets
 * its figure ("measuring").
 */
export type JudgingPhase = 'idle' | 'judging' | 'measuring' | 'done' | 'stopped' | 'failed';

/** What is known about the pairs of the open family. */
export interface ResultsState {
  readonly phase: JudgingPhase;
  /** Pairs answered in this phase, of how many. */
  readonly done: number;
  readonly total: number;
  /** What is known of every pair, with gaps while it is being judged; null before the first family. */
  readonly fits: KnownFits | null;
  /** Ids of blanks and tools of which so much wear would leave nothing; they are not judged. */
  readonly wornAway: ReadonlySet<string>;
  /** Why the judging failed, in plain words; empty otherwise. */
  readonly trouble: string;
}

/** A store in which nothing has been judged. */
export function makeResultsStore(): Store<ResultsState> {
  return makeStore<ResultsState>({ phase: 'idle', done: 0, total: 0, fits: null, wornAway: new Set(), trouble: '' });
}

/** Whether what is not known yet will stay so until the judging is begun again. */
export function isHalted(phase: JudgingPhase): boolean {
  return phase === 'stopped' || phase === 'failed';
}

/** Whether pairs are still being judged or measured. */
export function isRunning(phase: JudgingPhase): boolean {
  return phase === 'judging' || phase === 'measuring';
}
