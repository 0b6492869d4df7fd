import { useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { BladeLimits, Plan } from '../../../../family/plan.ts';
import type { PlanGap } from '../../../../plan/plan-gap.ts';
import { type SiteLayout, wardSites } from '../../../../plan/ward-sites.ts';
import { bladeLookOf } from '../../../state/plan/blade/blade-state.ts';
import { bladeText } from '../../../state/plan/blade/blade-words.ts';
import { useSession, useStore } from '../../use-store.ts';

/** The blade of a plan with its ward sites, and the picked one. */
export interface BladeNow {
  readonly plan: Plan;
  readonly blade: BladeLimits;
  readonly gap: PlanGap;
  readonly layout: SiteLayout;
  /** The picked site; null where there is none. */
  readonly picked: number | null;
}

/** The ward sites of a family's plan in the user's units; null where it has no plan. */
export function useBladeLayout({ plan, runningClearance, tolerance, leastWeb }: Family): BladeNow | null {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const site = useStore(bladeLookOf(session), (s) => s.site);
  const now = useMemo(() => {
    if (!plan) return null;
    const gap: PlanGap = { runningClearance, tolerance, ...(leastWeb === undefined ? {} : { leastWeb }) };
    const layout = wardSites(plan.blade, gap, plan.depths, (nm) => bladeText(nm, units));
    return { plan, blade: plan.blade, gap, layout };
  }, [plan, runningClearance, tolerance, leastWeb, units]);
  if (!now) return null;
  const count = now.layout.sites.length;
  return { ...now, picked: count === 0 ? null : Math.min(site, count - 1) };
}
