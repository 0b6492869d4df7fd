import { useEffect, useMemo, useRef } from 'react';
import type { Family } from '../../family/family.ts';
import { isMeasured } from '../../family/fit-cache.ts';
import type { Units } from '../../family/length-text.ts';
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
import { bandWriter, lengthWriter } from '../state/pair-sentence.ts';
import { alteredWords } from './compare/compare-words.ts';
import { useFamily, usePickedPair, usePickedRow } from './use-family.ts';
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
  /** False while the answer for these conditions is on its way and another one stands in its place. */
  readonly settled: boolean;
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

type Answer = Pick<JudgedPair, 'fit' | 'threeWay'>;

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
 * Judged at once where the blank stands upright. The search over tilts takes longer than a frame, so its fit comes from
 * the other threads, and until it is there the last answer for the pair stands, marked as unsettled.
 */
function useJudgedPair(): JudgedPair | null {
  const { doors, conditions, results } = useSession();
  const family = useFamily();
  const { entrant, opening } = usePickedPair();
  const state = useStore(conditions, (s) => s);
  const phase = useStore(results, (s) => s.phase);
  const row = usePickedRow();
  const tilted = state.tiltLimit > 0;
  const known = tilted && opening ? row.get(opening.id) : undefined;
  const threadsWork = tilted && phase !== 'stopped' && phase !== 'failed';
  const last = useRef<JudgedPair | null>(null);
  const judged = useMemo(() => {
    if (!family || !entrant || !opening) return null;
    const posed = pose(doors, { family, entrant, opening, state });
    if (posed.conditions.tiltLimit === 0 || !threadsWork) return { ...posed, ...answer(doors, posed), settled: true };
    if (known && isMeasured(known)) return { ...posed, ...answer(doors, posed, known), settled: true };
    return { ...posed, ...standIn(doors, posed, last.current), settled: false };
  }, [doors, family, entrant, opening, state, known, threadsWork]);
  useEffect(() => {
    last.current = judged;
  });
  return judged;
}

type Posed = Omit<JudgedPair, keyof Answer | 'settled'>;

function pose(doors: Doors, { family, entrant, opening, state }: Question): Posed {
  const wanted = conditionsFor(state, family);
  const bands = bandsFor(state, family, entrant, opening);
  const worn = doors.shapesUnder(opening.ring, entrant.ring, wanted);
  if (worn.entrant.length > 0) return { entrant, opening, conditions: wanted, bands, shapes: worn, wornAway: false };
  const conditions = { ...wanted, wear: 0, tiltLimit: 0 };
  const shapes = doors.shapesUnder(opening.ring, entrant.ring, conditions);
  return { entrant, opening, conditions, bands, shapes, wornAway: true };
}

function answer(doors: Doors, { entrant, opening, conditions, bands }: Posed, known?: Fit): Answer {
  const fit = known ?? doors.judgeNow(opening.ring, entrant.ring, conditions);
  return { fit, threeWay: doors.toleranceNow(opening.ring, entrant.ring, fit, bands, conditions) };
}

/** The answer that stands until the true one is there: the last one for the pair, else that for the upright blank. */
function standIn(doors: Doors, posed: Posed, last: JudgedPair | null): Answer {
  if (last && last.entrant.id === posed.entrant.id && last.opening.id === posed.opening.id)
    return { fit: last.fit, threeWay: last.threeWay };
  return answer(doors, { ...posed, conditions: { ...posed.conditions, tiltLimit: 0 } });
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
