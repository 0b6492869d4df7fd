import type { Verdict } from '../fit/fit.ts';

/** The answer to a question in plain words. */
export interface Answer {
  /**
   * answer: said. choose: a name has several senses, or comes near several names. unknown: a name that the family has
   * not. not understood: no question that can be answered. not judged yet: ask again.
   */
  readonly kind: 'answer' | 'choose' | 'unknown' | 'not understood' | 'not judged yet';
  /** The answer first, then its reason, what the names are, and the caveats. */
  readonly sentences: readonly string[];
  /** Of the one pair that was asked about. */
  readonly verdict?: Verdict;
  readonly pair?: { readonly entrantId: string; readonly openingId: string };
  /** Ids of the profiles that the answer names, those that were asked about first. */
  readonly profiles: readonly string[];
  /** Questions that can be asked instead, ready made. */
  readonly choices: readonly Choice[];
}

/** A question that can be asked instead. */
export interface Choice {
  /** Short: "Heron blank". */
  readonly label: string;
  readonly question: string;
}
