import type { BladeLimits } from '../family/plan.ts';
import { NM_PER_UM } from '../geom/point.ts';
import { bladeFaults } from './blade-faults.ts';
import { countSites } from './lay-out-sites.ts';
import { leastWebOf, type PlanGap } from './plan-gap.ts';

/** A change of one limit that makes room for more sites. */
export interface MoreRoom {
  readonly field: keyof BladeLimits | 'leastWeb';
  /** By how much, nanometres, below 0 for less; 0 where another face is allowed. */
  readonly by: number;
  /** How many sites there are then. */
  readonly sites: number;
}

/** Lengths that may be changed, and which way. */
const WAYS = [
  ['height', 1],
  ['cutZone', -1],
  ['backZone', -1],
  ['heightStep', -1],
  ['grooveWidth', -1],
  ['thickness', 1],
  ['grooveDepth', -1],
  ['leastWeb', -1],
] as const;

/** Changes are told in whole steps of this, nanometres. */
const GRAIN = 10 * NM_PER_UM;

/** No length is changed by more than this part of it. */
const MOST_CHANGE = 0.4;

/**
 * What one more site would need: for each limit that can give it alone the least change, the mildest first.
 *
 * @accuracy to 0.01 mm; a change that first gives no more and then, further on, does may be missed.
 * @returns empty where the blade cannot be made, or no single change gives more.
 * @check tests/unit/plan/one-more-site.test.ts
 */
export function oneMoreSite(blade: BladeLimits, gap: PlanGap, depths: number): MoreRoom[] {
  if (bladeFaults(blade, gap, depths).length > 0) return [];
  const now = countSites(blade, gap);
  const found: MoreRoom[] = [];
  if (blade.sides !== 'both') {
    const sites = countSites({ ...blade, sides: 'both' }, gap);
    if (sites > now) found.push({ field: 'sides', by: 0, sites });
  }
  for (const [field, way] of WAYS) {
    const sitesAt = (steps: number) => sitesWith(blade, gap, depths, field, way * steps * GRAIN);
    const most = Math.floor((MOST_CHANGE * lengthOf(blade, gap, field)) / GRAIN);
    const steps = leastSteps(most, (n) => sitesAt(n) > now);
    if (steps > 0) found.push({ field, by: way * steps * GRAIN, sites: sitesAt(steps) });
  }
  const share = ({ field, by }: MoreRoom) => (field === 'sides' ? 0 : Math.abs(by) / lengthOf(blade, gap, field));
  return found.sort((a, b) => share(a) - share(b));
}

type LengthField = (typeof WAYS)[number][0];

function lengthOf(blade: BladeLimits, gap: PlanGap, field: MoreRoom['field']): number {
  if (field === 'leastWeb') return leastWebOf(gap);
  return field === 'sides' ? 1 : Number(blade[field]);
}

function sitesWith(blade: BladeLimits, gap: PlanGap, depths: number, field: LengthField, by: number): number {
  const changed = field === 'leastWeb' ? blade : { ...blade, [field]: blade[field] + by };
  const gapNow = field === 'leastWeb' ? { ...gap, leastWeb: leastWebOf(gap) + by } : gap;
  return bladeFaults(changed, gapNow, depths).length > 0 ? 0 : countSites(changed, gapNow);
}

/** The least number of steps up to `most` that is enough: doubled until it is, then halved between; 0 where none is. */
function leastSteps(most: number, isEnough: (steps: number) => boolean): number {
  let [low, high] = [0, 1];
  while (high <= most && !isEnough(high)) [low, high] = [high, 2 * high];
  if (high > most) {
    if (most <= low || !isEnough(most)) return 0;
    high = most;
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  return high;
}
