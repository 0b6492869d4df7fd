import { useDeferredValue, useMemo } from 'react';
import type { Family } from '../../family/family.ts';
import type { Conditions } from '../../fit/conditions.ts';
import type { Explanation } from '../../fit/explain-placement.ts';
import type { Fit, Placement } from '../../fit/fit.ts';
import type { Bands, ThreeWay } from '../../fit/judge-tolerance.ts';
import type { Region } from '../../geom/region.ts';
import type { Ring } from '../../geom/ring.ts';
import type { Profile } from '../../profile/profile.ts';
import { bandsFor, type ConditionsState, conditionsFor } from '../state/conditions-state.ts';
import type { Doors } from '../state/doors.ts';
import { shownPlacement } from '../state/hand-state.ts';
import { handSentence } from '../state/hand-words.ts';
import type { Units } from '../state/length-text.ts';
import { bandWriter, lengthWriter } from '../state/pair-sentence.ts';
import { alteredWords } from './compare-words.ts';
import { useFamily, usePickedPair } from './use-family.ts';
import { useSession, useStore } from './use-store.ts';

/** The picked pair as it is judged in Compare, wherever the blank lies. */
export interface JudgedPair {
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly conditions: Conditions;
  readonly bands: Bands;
  /** The shapes as the conditions leave them: worn where there is wear. */
  readonly shapes: { readonly opening: Region; readonly entrant: readonly Ring[] };
  readonly fit: Fit;
  /** The answer for all parts in their bands. */
  readonly threeWay: ThreeWay;
  /** True where so much wear was asked for that nothing of the blank would be left: then it is judged new. */
  readonly wornAway: boolean;
}

/** The picked pair as Compare shows it. */
export interface ShownPair extends JudgedPair {
  readonly placement: Placement;
  /** True where the blank was moved away from its best placement. */
  readonly byHand: boolean;
  readonly explanation: Explanation;
  readonly sentence: string;
}

/** What is asked about a pair; a new value for each change of it. */
interface Question {
  readonly family: Family;
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly state: ConditionsState;
}

/** The picked pair where it stands now, with what touches or collides there; null when no pair is picked. */
export function useShownPair(): ShownPair | null {
  const { doors, hand, settings } = useSession();
  const judged = useJudgedPair();
  const handState = useStore(hand, (s) => s);
  const units = useStore(settings, (s) => s.units);
  return useMemo(() => {
    if (!judged) return null;
    const { shapes, fit } = judged;
    const placement = shownPlacement(handState, fit);
    const byHand = handState.placement !== null;
    const explanation = doors.explainPlacement(shapes.opening, shapes.entrant, placement);
    const sentence = sentenceOf(doors, judged, byHand, explanation, units);
    return { ...judged, placement, byHand, explanation, sentence };
  }, [doors, judged, handState, units]);
}

/**
 * Judged at once where the blank stands upright. The search over tilts takes longer than a frame, so its answer comes
 * after the frame that asked, and only for the latest question.
 */
function useJudgedPair(): JudgedPair | null {
  const { doors, conditions } = useSession();
  const family = useFamily();
  const { entrant, opening } = usePickedPair();
  const state = useStore(conditions, (s) => s);
  const asked = useMemo<Question | null>(
    () => (family && entrant && opening ? { family, entrant, opening, state } : null),
    [family, entrant, opening, state],
  );
  const later = useDeferredValue(asked);
  const question = asked && asked.state.tiltLimit > 0 ? later : asked;
  return useMemo(() => question && judge(doors, question), [doors, question]);
}

function judge(doors: Doors, { family, entrant, opening, state }: Question): JudgedPair {
  const wanted = conditionsFor(state, family);
  const bands = bandsFor(state, family, entrant, opening);
  const worn = doors.shapesUnder(opening.ring, entrant.ring, wanted);
  const wornAway = worn.entrant.length === 0;
  const conditions = wornAway ? { ...wanted, wear: 0 } : wanted;
  const shapes = wornAway ? doors.shapesUnder(opening.ring, entrant.ring, conditions) : worn;
  const fit = doors.judgeNow(opening.ring, entrant.ring, conditions);
  const threeWay = doors.toleranceNow(opening.ring, entrant.ring, fit, bands, conditions);
  return { entrant, opening, conditions, bands, shapes, fit, threeWay, wornAway };
}

function sentenceOf(
  doors: Doors,
  { entrant, opening, fit, conditions, wornAway }: JudgedPair,
  byHand: boolean,
  explanation: Explanation,
  units: Units,
): string {
  if (wornAway) return `Nothing would be left of ${entrant.name} after that much wear; it is shown new.`;
  if (byHand) return handSentence(doors, explanation, units);
  const altered = alteredWords(conditions, units);
  const plain = doors.fitSentence(entrant.name, opening.name, fit, explanation, lengthWriter(units), bandWriter(units));
  return altered === '' ? plain : `${altered}: ${plain}`;
}
