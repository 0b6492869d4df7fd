import { useMemo } from 'react';
import type { Explanation } from '../../fit/explain-placement.ts';
import type { Fit, Placement } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';
import { shownPlacement } from '../state/hand-state.ts';
import { handSentence } from '../state/hand-words.ts';
import { pairSentence } from '../state/pair-sentence.ts';
import { usePickedPair, usePickedRow } from './use-family.ts';
import { useSession, useStore } from './use-store.ts';

/** The picked pair as Compare shows it. */
export interface ShownPair {
  readonly entrant: Profile;
  readonly opening: Profile;
  /** The judged fit; undefined while the family is being judged. */
  readonly fit: Fit | undefined;
  readonly placement: Placement;
  /** True where the blank was moved away from its best placement. */
  readonly byHand: boolean;
  readonly explanation: Explanation;
  readonly sentence: string;
}

/** The picked pair where it stands now, with what touches or collides there; null when no pair is picked. */
export function useShownPair(): ShownPair | null {
  const { doors, hand, settings } = useSession();
  const { entrant, opening } = usePickedPair();
  const row = usePickedRow();
  const handState = useStore(hand, (s) => s);
  const units = useStore(settings, (s) => s.units);
  return useMemo(() => {
    if (!entrant || !opening) return null;
    const fit = row.get(opening.id);
    const placement = shownPlacement(handState, fit);
    const byHand = handState.placement !== null || !fit;
    const explanation = doors.explainPlacement(opening.ring, entrant.ring, placement);
    const sentence = byHand
      ? handSentence(doors, explanation, units)
      : pairSentence(doors, entrant, opening, fit, units);
    return { entrant, opening, fit, placement, byHand, explanation, sentence };
  }, [doors, entrant, opening, row, handState, units]);
}
