import { useEffect, useMemo, useState } from 'react';
import type { Fit } from '../../../../fit/fit.ts';
import { drawnPair } from '../../../state/plan/sections/drawn-sections.ts';
import { type DrawnPair, findPairGuard, planConditions } from '../../../state/plan/sections/sections-guard.ts';
import { useSession } from '../../use-store.ts';
import { type FoundSections, useSectionsLook } from './use-sections.ts';

/** The picked pair of a plan as it is drawn. */
export interface PlanPairNow extends DrawnPair {
  readonly fit: Fit;
  /** The wear of both parts at which it goes in, nanometres; null while it is measured, or where it goes in new. */
  readonly guard: number | null;
}

/** The picked pair, judged as it is drawn; null while nothing is drawn, or where a part of it is kept in reserve. */
export function usePlanPair(found: FoundSections | null): PlanPairNow | null {
  const { doors } = useSession();
  const { section, blank } = useSectionsLook(found);
  const drawn = found?.drawn ?? null;
  const access = found?.question.access ?? null;
  const pair = useMemo(
    () => (access && drawn ? drawnPair(drawn, access, section, blank) : null),
    [access, drawn, section, blank],
  );
  const gap = found?.question.gap;
  const fit = useMemo(() => {
    if (!pair || !gap) return null;
    return doors.judgeNow(pair.opening.ring, pair.entrant.ring, planConditions(gap));
  }, [doors, pair, gap]);
  const guard = useGuard(pair, fit, gap);
  return useMemo(() => (pair && fit ? { ...pair, fit, guard } : null), [pair, fit, guard]);
}

/** The guard of a blocked pair, found in another thread. */
function useGuard(pair: DrawnPair | null, fit: Fit | null, gap: FoundSections['question']['gap'] | undefined) {
  const { doors } = useSession();
  const [known, setKnown] = useState<{ pair: unknown; wear: number } | null>(null);
  useEffect(() => {
    if (!pair || !gap || fit?.verdict !== 'blocked') return;
    return findPairGuard(doors, pair, fit, gap, (wear) => setKnown({ pair, wear }));
  }, [doors, pair, fit, gap]);
  return known && known.pair === pair ? known.wear : null;
}
