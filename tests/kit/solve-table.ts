import type { AccessTable } from '../../src/plan/access-table.ts';
import { solveOn } from '../../src/plan/solve-on.ts';
import { checkWardPlan, type SolveOptions, type WardPlan } from '../../src/plan/ward-plan.ts';

/** Options with one stop, one depth and time enough for small tables. */
export function solveOptions(changes: Partial<SolveOptions> = {}): SolveOptions {
  return { stops: 1, depths: 1, mostSites: 20, seconds: 30, ...changes };
}

/** Solves to the end; every plan that comes on the way must keep the table and be no worse than the one before. */
export async function solveTable(table: AccessTable, changes: Partial<SolveOptions> = {}): Promise<WardPlan> {
  const options = solveOptions(changes);
  const seen: WardPlan[] = [];
  const plan = await solveOn(table, options, {
    now: () => performance.now(),
    cancelled: () => false,
    pause: () => new Promise((resolve) => setImmediate(resolve)),
    tell: () => {},
    better: (better) => seen.push(better),
  });
  if (!plan) throw new Error('no table');
  for (const [at, part] of [...seen, plan].entries()) {
    const fault = checkWardPlan(table, part, options.stops);
    if (fault) throw new Error(`part ${at} ${fault}`);
    if (at > 0 && part.sites > seen[at - 1].sites) throw new Error(`part ${at} has more sites than the one before`);
  }
  return plan;
}
