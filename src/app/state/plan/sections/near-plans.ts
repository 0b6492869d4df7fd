import type { BladeLimits, Plan } from '../../../../family/plan.ts';
import { reservedTable } from '../../../../plan/access.ts';
import type { AccessTable } from '../../../../plan/access-table.ts';
import type { NearestPlan } from '../../../../plan/nearest-plan.ts';
import type { SolveOptions } from '../../../../plan/ward-plan.ts';
import { wardSites } from '../../../../plan/ward-sites.ts';
import type { SectionsQuestion } from './sections-question.ts';

/** Other choices of a plan. */
export interface PlanChange {
  readonly options?: Partial<Pick<Plan, 'stops' | 'depths' | 'reserve'>>;
  readonly blade?: Partial<BladeLimits>;
  /** Sections that become one, each group by its names; the first name stays. Nobody but the planner can choose better. */
  readonly shared?: readonly (readonly string[])[];
  /** Sections that are left out. It is only told: which ones can go, nobody but the planner knows. */
  readonly without?: readonly string[];
}

/** A change that might make a plan fit its blade; how many sites it then needs is to be looked for. */
export interface NearQuestion {
  readonly change: PlanChange;
  readonly table: AccessTable;
  readonly options: SolveOptions;
}

/** A change with what it comes to. */
export interface NearPlan {
  readonly change: PlanChange;
  readonly sites: number;
  /** How many sites the blade has room for then. */
  readonly room: number;
}

const STOPS = [1, 2, 3] as const;
const DEPTHS = [1, 2, 3, 4] as const;

/** A number of wards as the solver takes it. */
export function stopsOf(stops: number): SolveOptions['stops'] {
  return STOPS.find((one) => one >= stops) ?? 3;
}

/** A number of depths as the solver takes it. */
export function depthsOf(depths: number): SolveOptions['depths'] {
  return DEPTHS.find((one) => one >= depths) ?? 4;
}

/**
 * The changes of what is asked of the wards that may do with fewer sites: more depths at a site, fewer wards in the way,
 * less in reserve. The blade stays as it is.
 *
 * @check tests/unit/app/near-plans.test.ts
 */
export function nearQuestions({ plan, access, gap }: SectionsQuestion): NearQuestion[] {
  const changes: NonNullable<PlanChange['options']>[] = [
    ...DEPTHS.filter((depths) => depths > plan.depths).map((depths) => ({ depths })),
    ...STOPS.filter((stops) => stops < plan.stops)
      .reverse()
      .map((stops) => ({ stops })),
    ...(plan.reserve > 0 ? [{ reserve: 0 }] : []),
  ];
  return changes.flatMap((options) => {
    const { stops, depths, reserve } = { ...plan, ...options };
    const mostSites = wardSites(plan.blade, gap, depths).sites.length;
    if (mostSites === 0) return [];
    const asked = { stops: stopsOf(stops), depths: depthsOf(depths), mostSites, seconds: 0 };
    return [{ change: { options }, table: reservedTable(access, reserve), options: asked }];
  });
}

const MM = 1_000_000;

/** Furthest that a limit of the blade is changed to be called near. */
const FURTHEST = { height: 4 * MM, cutZone: 1.5 * MM, heightStep: 0.6 * MM, step: 0.05 * MM };

/**
 * The least changes of one limit of the blade each that give it room for so many sites.
 *
 * @param sites how many sites are needed.
 * @check tests/unit/app/near-plans.test.ts
 */
export function nearBlades({ plan, gap }: SectionsQuestion, sites: number): NearPlan[] {
  const { blade, depths } = plan;
  const tried = (change: Partial<BladeLimits>): NearPlan | null => {
    const room = wardSites({ ...blade, ...change }, gap, depths).sites.length;
    return room >= sites ? { change: { blade: change }, sites, room } : null;
  };
  // More room never comes of less change, so the least that does is found by halving.
  const first = (most: number, change: (by: number) => Partial<BladeLimits>): NearPlan[] => {
    let [none, some] = [0, Math.floor(most / FURTHEST.step)];
    let best = tried(change(some * FURTHEST.step));
    while (best && some - none > 1) {
      const middle = Math.floor((none + some) / 2);
      const near = tried(change(middle * FURTHEST.step));
      if (near) [some, best] = [middle, near];
      else none = middle;
    }
    return best ? [best] : [];
  };
  const both = blade.sides === 'both' ? null : tried({ sides: 'both' });
  return [
    ...(both ? [both] : []),
    ...first(FURTHEST.heightStep, (by) => ({ heightStep: blade.heightStep - by })),
    ...first(Math.min(FURTHEST.cutZone, blade.cutZone), (by) => ({ cutZone: blade.cutZone - by })),
    ...first(FURTHEST.height, (by) => ({ height: blade.height + by })),
  ];
}

/**
 * What the solver says of plans with fewer sections and with shared ones, by the names of the sections; sections in
 * reserve have numbers.
 *
 * @check tests/unit/app/near-plans.test.ts
 */
export function fewerSections({ access, table, layout }: SectionsQuestion, found: readonly NearestPlan[]): NearPlan[] {
  const room = layout.sites.length;
  const nameOf = (row: number) => access.sections[row]?.name ?? `reserve ${row - access.sections.length + 1}`;
  return found.flatMap(({ change, sections, plan: { sites } }): NearPlan[] => {
    if (change === 'sharing') {
      const shared = sections.filter((rows) => rows.length > 1).map((rows) => rows.map(nameOf));
      return [{ change: { shared }, sites, room }];
    }
    if (change !== 'sections') return [];
    const kept = new Set(sections.flat());
    return [{ change: { without: table.flatMap((_, i) => (kept.has(i) ? [] : [nameOf(i)])) }, sites, room }];
  });
}

/** Whether a change can be made for the planner: not where sections are left out, or one in reserve would be shared. */
export function isMadeByKey({ shared, without }: PlanChange, { access }: Pick<SectionsQuestion, 'access'>): boolean {
  const names = new Set(access.sections.map(({ name }) => name));
  return without === undefined && (shared ?? []).every((group) => group.every((name) => names.has(name)));
}

/** Those that fit first, the least change before the others; then the one that lacks least. */
export function inOrderOfNearness(plans: readonly NearPlan[]): NearPlan[] {
  const lack = ({ sites, room }: NearPlan) => Math.max(0, sites - room);
  const fitting = plans.filter((near) => lack(near) === 0);
  if (fitting.length > 0) return [...fitting];
  return [...plans].sort((a, b) => lack(a) - lack(b)).slice(0, 1);
}
