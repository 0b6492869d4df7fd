import type { Family } from '../../../../family/family.ts';
import type { Plan } from '../../../../family/plan.ts';
import { type Access, accessOf, reservedTable } from '../../../../plan/access.ts';
import type { AccessTable } from '../../../../plan/access-table.ts';
import { type PlanGap, planGapOf } from '../../../../plan/plan-gap.ts';
import { type SiteLayout, wardSites } from '../../../../plan/ward-sites.ts';

/** What is asked of the solver: the very same value as long as plan and gap are the same. */
export interface SectionsQuestion {
  readonly plan: Plan;
  readonly gap: PlanGap;
  readonly access: Access;
  /** Rows are sections, those kept in reserve last; columns are blanks. */
  readonly table: AccessTable;
  readonly layout: SiteLayout;
  /** Why nothing can be planned yet; empty where it can. */
  readonly hindrance: Hindrance | null;
}

/** Why there is nothing to plan, in words, and the sheet where it is mended. */
export interface Hindrance {
  readonly what: string;
  readonly cure: string;
  readonly sheet: 'access' | 'blade';
}

const known = new WeakMap<Plan, SectionsQuestion>();

/**
 * What the plan of a family asks for; null where it has none.
 *
 * @check tests/unit/app/sections-planning.test.ts
 */
export function sectionsQuestion(family: Family): SectionsQuestion | null {
  const { plan } = family;
  if (!plan) return null;
  const before = known.get(plan);
  if (before && isSameGap(before.gap, family)) return before;
  const gap = planGapOf(family);
  const access = accessOf(plan);
  const layout = wardSites(plan.blade, gap, plan.depths);
  const table = reservedTable(access, plan.reserve);
  const question = { plan, gap, access, table, layout, hindrance: hindranceOf(access, layout) };
  known.set(plan, question);
  return question;
}

/**
 * Whether two questions ask the solver for the same, so that wards found for one are an answer to the other: who enters
 * what in the same order, and room for as many sites. Names may differ, and whatever of the blade leaves the sites alone.
 *
 * @check tests/unit/app/sections-planning.test.ts
 */
export function isSameSearch(a: SectionsQuestion, b: SectionsQuestion): boolean {
  return (
    (a.hindrance === null) === (b.hindrance === null) &&
    a.plan.stops === b.plan.stops &&
    a.plan.depths === b.plan.depths &&
    a.layout.sites.length === b.layout.sites.length &&
    a.table.length === b.table.length &&
    a.table.every((row, i) => row.length === b.table[i].length && row.every((cell, k) => cell === b.table[i][k]))
  );
}

function isSameGap(a: PlanGap, b: PlanGap): boolean {
  return (
    a.runningClearance === b.runningClearance &&
    a.tolerance === b.tolerance &&
    a.leastWeb === b.leastWeb &&
    a.tiltLimit === b.tiltLimit
  );
}

function hindranceOf(access: Access, layout: SiteLayout): Hindrance | null {
  if (access.sections.length === 0)
    return { what: 'The plan has no areas yet.', cure: 'Name the areas that get a keyway.', sheet: 'access' };
  const contradiction = access.faults.find(({ kind }) => kind === 'contradiction');
  if (contradiction) return { what: contradiction.what, cure: contradiction.cure, sheet: 'access' };
  if (access.blanks.length === 0)
    return { what: 'The plan asks for no blank.', cure: 'Name holders, or ask for base blanks.', sheet: 'access' };
  if (layout.sites.length === 0 && access.sections.length > 1)
    return { what: 'The blade has no place for a ward.', cure: limitWords(layout), sheet: 'blade' };
  return null;
}

function limitWords({ limits }: SiteLayout): string {
  return limits
    .filter(({ kind }) => kind !== 'note')
    .map(({ words, cure }) => `${words}. ${cure}`.trim())
    .join(' ');
}
