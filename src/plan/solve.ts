import { randomFrom } from '../fit/monte-carlo.ts';
import type { AccessTable } from './access-table.ts';
import { constructingWards } from './construct-wards.ts';
import { fewerSites } from './fewer-sites.ts';
import { expandWards, isTable, type Kernel, reduceTable } from './reduce-table.ts';
import { type LowerBound, siteBound } from './site-bounds.ts';
import { checkWardPlan, type SolveOptions, type WardPlan } from './ward-plan.ts';
import { type SearchSetting, settingOf, WardSearch } from './ward-search.ts';

export type { SolveOptions, WardPlan };
export { checkWardPlan };

/** Seed of every search: one table has one answer. */
const SEED = 7;

/** What the search at once may cost, in looks at pairs. */
const WORK_AT_ONCE = 1_500_000;

/** A table ready to be solved: what is left of it, the bound that needs no search, and wards for it. */
export interface SolveStart {
  readonly setting: SearchSetting;
  readonly kernel: Kernel;
  readonly bound: LowerBound;
  readonly found: WardSearch;
}

/**
 * Wards and grooves for a table at once: built up by codes, shortened by a brief search, checked by inclusion.
 *
 * @returns the plan with its bound, also where it needs more sites than the blade has; null for a table that is none
 *   (rows of different lengths, other values than 1, 0 and null).
 * @check tests/outside/ward-sites.test.ts
 */
export function solveAtOnce(table: AccessTable, options: SolveOptions): WardPlan | null {
  const start = startSolving(table, options);
  return start && planOf(table, start.kernel, start.found, start.bound, options);
}

/** What {@link solveAtOnce} knows, for whoever searches on; null for a table that is none. */
export function startSolving(table: AccessTable, options: SolveOptions): SolveStart | null {
  const steps = startingToSolve(table, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** So many looks at pairs are one piece of work. */
const PIECE = 30_000;

/** {@link startSolving} piece by piece: large tables with several stops take seconds. */
export function* startingToSolve(
  table: AccessTable,
  { stops, depths }: SolveOptions,
): Generator<void, SolveStart | null, void> {
  if (!isTable(table)) return null;
  const kernel = reduceTable(table);
  const setting = settingOf(kernel, stops, depths);
  yield;
  const bound = siteBound(setting);
  if (kernel.rows === 0) return { setting, kernel, bound, found: new WardSearch(setting, 0) };
  yield;
  const random = randomFrom(SEED);
  let found = yield* constructingWards(setting, bound.sites, random);
  found.trim(random);
  let work = WORK_AT_ONCE;
  while (found.sites > bound.sites && work > 0) {
    const search = fewerSites(found, random);
    for (let pause = work - PIECE; search.search.lacking > 0 && work > 0; work -= search.step()) {
      if (work > pause) continue;
      pause = work - PIECE;
      yield;
    }
    if (search.search.lacking > 0) break;
    found = search.search;
    found.trim(random);
  }
  return { setting, kernel, bound, found };
}

/**
 * The plan that a search has found.
 *
 * @throws Error where the plan does not keep the table: the solver would be wrong, and nothing is given out.
 */
export function planOf(
  table: AccessTable,
  kernel: Kernel,
  found: WardSearch,
  { sites: lowerBound, bound }: LowerBound,
  { stops }: SolveOptions,
): WardPlan {
  const { sites } = found;
  const { wards, grooves } = expandWards(table, kernel, found.rows(), sites);
  const grooved = grooves.reduce((sum, depths) => sum + depths.reduce((a, b) => a + b, 0), 0);
  const plan = { sites, wards, grooves, lowerBound, bound, proved: lowerBound === sites, grooved };
  const fault = checkWardPlan(table, plan, stops);
  if (fault) throw new Error(`The plan found ${fault}.`);
  return plan;
}
