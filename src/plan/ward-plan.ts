import type { AccessTable } from './access-table.ts';

/** What the wards of a plan must be like. */
export interface SolveOptions {
  /** By how many sites, each enough by itself, a blank is stopped where it must not enter. */
  readonly stops: 1 | 2 | 3;
  /** How many depths a ward may have at one site; 1: it is there or not. */
  readonly depths: 1 | 2 | 3 | 4;
  /** How many sites the blade has room for. */
  readonly mostSites: number;
  /** How long the search for fewer sites and the proof may take. */
  readonly seconds: number;
}

/** What says that fewer sites do not do. */
export type SiteBound = 'sperner' | 'fooling' | 'search' | 'none';

/**
 * Wards of sections and grooves of blanks. Rows are sections, columns blanks; `wards[section][site]` and
 * `grooves[blank][site]` are depths from 0 (none). A blank enters exactly where ward <= groove at every site.
 */
export interface WardPlan {
  readonly sites: number;
  readonly wards: readonly (readonly number[])[];
  readonly grooves: readonly (readonly number[])[];
  /** No plan has fewer sites than this. */
  readonly lowerBound: number;
  /** What shows the lower bound; 'none' where nothing has to be stopped. */
  readonly bound: SiteBound;
  /** Whether it is shown that fewer sites do not do. */
  readonly proved: boolean;
  /** All groove depths of all blanks, added up: what has to be milled. */
  readonly grooved: number;
  /** Why the exact solver could not be asked, where it could not; for people. */
  readonly note?: string;
}

/**
 * Checks a plan against its table by direct inclusion, cell by cell; it shares no code with the solver.
 *
 * @returns null where every cell is kept; else what is wrong with the first that is not, in words for people.
 * @check tests/unit/plan/check-ward-plan.test.ts
 */
export function checkWardPlan(
  table: AccessTable,
  plan: Pick<WardPlan, 'sites' | 'wards' | 'grooves'>,
  stops: number,
): string | null {
  if (plan.wards.length !== table.length) return `has wards for ${plan.wards.length} sections, not ${table.length}`;
  for (const [i, row] of table.entries()) {
    if (plan.grooves.length !== row.length) return `has grooves for ${plan.grooves.length} blanks, not ${row.length}`;
    if (plan.wards[i].length !== plan.sites) return `section ${i + 1} has ${plan.wards[i].length} sites`;
    for (const [j, cell] of row.entries()) {
      const fault = cell === null ? null : checkCell(plan.wards[i], plan.grooves[j], cell === 1, stops);
      if (fault) return `blank ${j + 1} in section ${i + 1} ${fault}`;
    }
  }
  return null;
}

function checkCell(wards: readonly number[], grooves: readonly number[], enters: boolean, stops: number) {
  if (grooves.length !== wards.length) return `has ${grooves.length} sites, not ${wards.length}`;
  const stopped = wards.filter((ward, site) => ward > grooves[site]).length;
  if (enters && stopped > 0) return `must enter and is stopped at ${stopped} of the sites`;
  if (!enters && stopped < stops) return `must be stopped at ${stops} sites, is at ${stopped}`;
  return null;
}
