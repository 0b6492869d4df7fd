import { makeKeptStore, type Shelf } from '../kept-store.ts';
import type { Store } from '../store.ts';

/** What was done in the quiz so far on this computer. */
export interface KeptScore {
  /** Rounds that were gone through to the end. */
  readonly rounds: number;
  readonly right: number;
  readonly of: number;
  /** The longest row of right answers. */
  readonly longest: number;
}

const SHELF_KEY = 'sectionary-quiz';

/** Before the first round. */
export const NO_SCORE: KeptScore = { rounds: 0, right: 0, of: 0, longest: 0 };

/**
 * A store of the quiz's score that starts with what the shelf holds and writes every change back, beside the settings. A
 * shelf that is full, forbidden or holds nonsense costs the memory of the score and nothing else.
 *
 * @check tests/unit/app/quiz-score.test.ts
 */
export function makeQuizScoreStore(shelf: Shelf | null): Store<KeptScore> {
  return makeKeptStore(shelf, SHELF_KEY, scoreOf);
}

/** Adds a round to the score. */
export function keepRound(store: Store<KeptScore>, round: Omit<KeptScore, 'rounds'>): void {
  store.setState(({ rounds, right, of, longest }) => ({
    rounds: rounds + 1,
    right: right + round.right,
    of: of + round.of,
    longest: Math.max(longest, round.longest),
  }));
}

function scoreOf({ rounds, right, of, longest }: Readonly<Record<string, unknown>>): KeptScore {
  const sound = [rounds, right, of, longest].every((n) => Number.isSafeInteger(n) && Number(n) >= 0);
  if (!sound || Number(right) > Number(of)) return NO_SCORE;
  return { rounds: Number(rounds), right: Number(right), of: Number(of), longest: Number(longest) };
}
