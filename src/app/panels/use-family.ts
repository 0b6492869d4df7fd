import { useMemo } from 'react';
import type { Family } from '../../family/family.ts';
import type { Fit } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';
import { rowOf } from '../state/fits-lookup.ts';
import { isHalted } from '../state/results-state.ts';
import { useSession, useStore } from './use-store.ts';

/** The open family; null before the first one is open. */
export function useFamily(): Family | null {
  const { documents } = useSession();
  return useStore(documents, (s) => s.document?.family ?? null);
}

/** The picked blank or tool and the picked keyway. */
export function usePickedPair(): { entrant: Profile | null; opening: Profile | null } {
  const { selection } = useSession();
  const family = useFamily();
  const entrantId = useStore(selection, (s) => s.entrantId);
  const openingId = useStore(selection, (s) => s.openingId);
  return useMemo(() => {
    const find = (id: string | null) => family?.profiles.find((p) => p.id === id) ?? null;
    return { entrant: find(entrantId), opening: find(openingId) };
  }, [family, entrantId, openingId]);
}

/** The judged fits of the picked blank or tool, by opening id. */
export function usePickedRow(): ReadonlyMap<string, Fit> {
  const { selection, results } = useSession();
  const fits = useStore(results, (s) => s.fits);
  const entrantId = useStore(selection, (s) => s.entrantId);
  return useMemo(() => rowOf(fits, entrantId), [fits, entrantId]);
}

/** Whether so much wear as is set would leave nothing of a blank or tool. */
export function useWornAway(entrant: Profile | null): boolean {
  const { results } = useSession();
  return useStore(results, (s) => entrant !== null && s.wornAway.has(entrant.id));
}

/** Whether the judging was stopped, so that what is not known yet does not come. */
export function useHalted(): boolean {
  const { results } = useSession();
  return useStore(results, (s) => isHalted(s.phase));
}
