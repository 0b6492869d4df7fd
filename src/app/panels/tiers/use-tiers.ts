import { useEffect, useMemo, useRef } from 'react';
import { entrantsOf, type Family } from '../../../family/family.ts';
import { type TiersOfFits, tiersOfFits } from '../../state/tiers/tiers-of-fits.ts';
import { useSession, useStore } from '../use-store.ts';

/** The tiers of the open family; null until every pair is judged. */
function useTiers(): TiersOfFits | null {
  const { results } = useSession();
  const fits = useStore(results, (s) => s.fits);
  const wornAway = useStore(results, (s) => s.wornAway);
  return useMemo(() => tiersOfFits(fits, wornAway), [fits, wornAway]);
}

/** The tiers of what the diagram shows: of blanks, and of tools too where they are switched on or there is nothing else. */
export function useShownTiers(family: Family): TiersOfFits | null {
  const { results, tiers } = useSession();
  const fits = useStore(results, (s) => s.fits);
  const wornAway = useStore(results, (s) => s.wornAway);
  const withTools = useStore(tiers, (s) => s.withTools);
  return useMemo(() => {
    const tools = entrantsOf(family).filter(({ kind }) => kind === 'tool');
    const hidden = withTools || tools.length === entrantsOf(family).length ? [] : tools;
    return tiersOfFits(fits, new Set([...wornAway, ...hidden.map(({ id }) => id)]));
  }, [family, fits, wornAway, withTools]);
}

/** The tiers of all that go in, known last, so that an edit under way leaves the order as it is; null before the first. */
export function useLastTiers(): TiersOfFits | null {
  return useLast(useTiers());
}

/** What the diagram shows, known last. */
export function useLastShownTiers(family: Family): TiersOfFits | null {
  return useLast(useShownTiers(family));
}

/** What was known last of the family that is open. */
function useLast(now: TiersOfFits | null): TiersOfFits | null {
  const { documents } = useSession();
  const opened = useStore(documents, (s) => s.opened);
  const last = useRef({ opened, known: now });
  useEffect(() => {
    if (now) last.current = { opened, known: now };
  }, [now, opened]);
  return now ?? (last.current.opened === opened ? last.current.known : null);
}

/** Profiles of a family by id. */
export function useProfiles(family: Family) {
  return useMemo(() => new Map(family.profiles.map((profile) => [profile.id, profile])), [family]);
}
