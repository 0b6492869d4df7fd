import { useEffect, useMemo, useRef } from 'react';
import type { Family } from '../../../family/family.ts';
import { type TiersOfFits, tiersOfFits } from '../../state/tiers/tiers-of-fits.ts';
import { useSession, useStore } from '../use-store.ts';

/** The tiers of the open family; null until every pair is judged. */
export function useTiers(): TiersOfFits | null {
  const { results } = useSession();
  const fits = useStore(results, (s) => s.fits);
  const wornAway = useStore(results, (s) => s.wornAway);
  return useMemo(() => tiersOfFits(fits, wornAway), [fits, wornAway]);
}

/** The tiers that were known last, so that an edit under way leaves the order as it is; null before the first. */
export function useLastTiers(): TiersOfFits | null {
  const now = useTiers();
  const last = useRef(now);
  useEffect(() => {
    if (now) last.current = now;
  }, [now]);
  return now ?? last.current;
}

/** Profiles of a family by id. */
export function useProfiles(family: Family) {
  return useMemo(() => new Map(family.profiles.map((profile) => [profile.id, profile])), [family]);
}
