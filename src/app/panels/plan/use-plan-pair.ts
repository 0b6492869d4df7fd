import { useEffect, useMemo, useState } from 'react';
import type { Fit } from '../../../fit/fit.ts';
import { packOutline } from '../../../jobs/packed-outline.ts';
import { outlineKey } from '../../../profile/outline-key.ts';
import type { Profile } from '../../../profile/profile.ts';
import { drawnPair } from '../../state/plan/drawn-sections.ts';
import { useSession } from '../use-store.ts';
import { type FoundSections, useSectionsLook } from './use-sections.ts';

/** The picked pair of a plan as it is drawn. */
export interface PlanPairNow {
  readonly opening: Profile;
  readonly entrant: Profile;
  readonly fit: Fit;
  /** The wear of both parts at which it goes in, nanometres; null while it is measured, or where it goes in new. */
  readonly guard: number | null;
}

/** The picked pair, judged as it is drawn; null while nothing is drawn, or where a part of it is kept in reserve. */
export function usePlanPair(found: FoundSections | null): PlanPairNow | null {
  const { doors } = useSession();
  const { section, blank } = useSectionsLook(found);
  const drawn = found?.drawn ?? null;
  const pair = useMemo(
    () => (found && drawn ? drawnPair(drawn, found.question.access, section, blank) : null),
    [found, drawn, section, blank],
  );
  const gap = found?.question.gap;
  const fit = useMemo(() => {
    if (!pair || !gap) return null;
    return doors.judgeNow(pair.opening.ring, pair.entrant.ring, conditionsOf(gap));
  }, [doors, pair, gap]);
  const guard = useGuard(pair, fit, gap);
  return useMemo(() => (pair && fit ? { ...pair, fit, guard } : null), [pair, fit, guard]);
}

type Gap = FoundSections['question']['gap'];

function conditionsOf({ runningClearance }: Gap) {
  return { runningClearance, tiltLimit: 0, wear: 0 };
}

/** The guard of a blocked pair, found in another thread. */
function useGuard(pair: Pick<PlanPairNow, 'opening' | 'entrant'> | null, fit: Fit | null, gap: Gap | undefined) {
  const { doors } = useSession();
  const [known, setKnown] = useState<{ pair: unknown; wear: number } | null>(null);
  useEffect(() => {
    if (!pair || !gap || fit?.verdict !== 'blocked') return;
    const pack = ({ ring }: Profile) => packOutline(`plan ${outlineKey(ring)}`, ring);
    let job: ReturnType<typeof doors.judgeDetails> | null = null;
    try {
      job = doors.judgeDetails(
        {
          entrant: pack(pair.entrant),
          openings: [pack(pair.opening)],
          fits: [fit],
          bands: [{ blank: gap.tolerance, opening: gap.tolerance }],
          conditions: conditionsOf(gap),
          wear: true,
        },
        ({ wear }) => setKnown(wear ? { pair, wear: wear.both } : null),
      );
      job.result.catch(() => {});
    } catch {
      // Without threads the guard of the pair stays unknown; the report has that of all pairs.
    }
    return () => job?.cancel();
  }, [doors, pair, fit, gap]);
  return known && known.pair === pair ? known.wear : null;
}
