import type { Fit } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';

/** One pair of the edited profile. */
export interface PairNow {
  readonly other: Profile;
  /** The last fit that is known, also while the one for the present outline is on its way. */
  readonly fit: Fit | undefined;
  readonly settled: boolean;
}

const RANKS = { enters: 0, tight: 0, blocked: 2 } as const;

/**
 * The pairs in which the blank goes in first, those that are not known next, the blocked ones last; each group in the
 * order of the chart.
 *
 * @check tests/unit/app/pairs-in-order.test.ts
 */
export function goingFirst<P extends Pick<PairNow, 'fit'>>(pairs: readonly P[]): P[] {
  const rank = ({ fit }: P) => (fit ? RANKS[fit.verdict] : 1);
  return [...pairs].sort((a, b) => rank(a) - rank(b));
}
