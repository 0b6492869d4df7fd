import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { isMeasured } from '../../../family/fit-cache.ts';
import type { Explanation } from '../../../fit/explain-placement.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { TeachingKnowledge } from '../../../teach/teaching-knowledge.ts';
import { conditionsFor } from '../../state/conditions-state.ts';
import { pairSentence } from '../../state/pair-sentence.ts';
import { knowledgeForTeaching } from '../../state/teach/knowledge-for-teaching.ts';
import { useSession, useStore } from '../use-store.ts';

/** What the window knows of the family now, for the lesson and the quiz. */
export function useTeaching(family: Family): TeachingKnowledge {
  const session = useSession();
  const { doors } = session;
  const fits = useStore(session.results, (s) => s.fits);
  const conditions = useStore(session.conditions, (s) => s);
  const units = useStore(session.settings, (s) => s.units);
  return useMemo(
    () => knowledgeForTeaching(doors, { family, fits, conditions, units }),
    [doors, family, fits, conditions, units],
  );
}

/** One pair as a room is shown it. */
export interface TaughtPair {
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly fit: Fit;
  /** At the best placement. */
  readonly explanation: Explanation;
  readonly sentence: string;
}

/**
 * The fit of a pair with its reason under the open conditions. What is not known yet is judged at once, upright; null
 * where a part is missing, or where wear would leave nothing of it.
 */
export function useTaughtPair(family: Family, entrant: Profile | null, opening: Profile | null): TaughtPair | null {
  const session = useSession();
  const { doors } = session;
  const state = useStore(session.conditions, (s) => s);
  const units = useStore(session.settings, (s) => s.units);
  const known = useKnownFit(family, entrant, opening);
  return useMemo(() => {
    if (!entrant || !opening) return null;
    const conditions = conditionsFor(state, family);
    const shapes = doors.shapesUnder(opening.ring, entrant.ring, conditions);
    if (shapes.entrant.length === 0) return null;
    const fit = known ?? doors.judgeNow(opening.ring, entrant.ring, { ...conditions, tiltLimit: 0 });
    const explanation = doors.explainPlacement(shapes.opening, shapes.entrant, fit.placement);
    return {
      entrant,
      opening,
      fit,
      explanation,
      sentence: pairSentence(doors, { entrant, opening, fit, conditions }, units),
    };
  }, [doors, family, entrant, opening, state, units, known]);
}

function useKnownFit(family: Family, entrant: Profile | null, opening: Profile | null): Fit | undefined {
  const { fitOf } = useTeaching(family);
  const fit = entrant && opening ? fitOf(entrant.id, opening.id) : undefined;
  return fit && isMeasured(fit) ? fit : undefined;
}
