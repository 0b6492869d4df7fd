import { cautionLine } from '../family/cautions.ts';
import { type NamedAccessTable, readAccessTable } from '../interchange/csv/read-access-table.ts';
import { catalogue } from '../jobs/catalogue.ts';
import type { SiteBound, WardPlan } from '../plan/ward-plan.ts';
import { shown } from './fit-table.ts';
import type { PlanTableCommand } from './parse-plan.ts';
import { EXIT, readOrWarn, type Shell } from './shell.ts';

/**
 * Finds wards and grooves for a bare table, prints them, and returns the exit code.
 *
 * @check tests/unit/cli/run-plan-table.test.ts
 */
export async function runPlanTable(command: PlanTableCommand, shell: Shell): Promise<number> {
  const text = readOrWarn(command.table, shell);
  if (text === null) return EXIT.badInput;
  const table = readAccessTable(text);
  if (!table.ok) {
    for (const { path, what, cure } of table.faults) shell.warn(`${command.table}: ${path}: ${what}. ${cure}\n`);
    return EXIT.badInput;
  }
  const plan = await catalogue.solvePlan({ table: table.read.table, options: command.options }, shell.jobs);
  if (plan.note !== undefined) shell.warn(`${plan.note}; the bound holds without it.\n`);
  shell.print(command.json ? planJson(table.read, plan, command) : planText(table.read, plan, command));
  return EXIT.done;
}

/** Sites from 1 by name; with several depths each site with its depth. */
function sitesByName(names: readonly string[], depths: readonly (readonly number[])[], steps: number) {
  return Object.fromEntries(
    names.map((name, at) => {
      const sites = depths[at].flatMap((depth, s) => (depth > 0 ? [[s + 1, depth] as const] : []));
      return [name, steps > 1 ? Object.fromEntries(sites) : sites.map(([site]) => site)];
    }),
  );
}

function planJson({ sections, blanks }: NamedAccessTable, plan: WardPlan, { options }: PlanTableCommand): string {
  const { sites, lowerBound, proved, bound } = plan;
  const lines = (byName: Readonly<Record<string, unknown>>) => {
    const entries = Object.entries(byName).map(
      ([name, value]) => `    ${JSON.stringify(name)}: ${JSON.stringify(value)}`,
    );
    return entries.length === 0 ? '{}' : `{\n${entries.join(',\n')}\n  }`;
  };
  const fields = [
    ...Object.entries({ sites, lowerBound, proved, bound }).map(([key, value]) => `"${key}": ${JSON.stringify(value)}`),
    `"wards": ${lines(sitesByName(sections, plan.wards, options.depths))}`,
    `"grooves": ${lines(sitesByName(blanks, plan.grooves, options.depths))}`,
  ];
  return `{\n${fields.map((field) => `  ${field}`).join(',\n')}\n}\n`;
}

/** What shows that fewer sites do not do. */
const BOUND_WORDS: Readonly<Record<SiteBound, string>> = {
  sperner: 'sections or blanks that exclude each other need so many (Sperner)',
  fooling: 'so many forbidden pairs each need a site of their own (a fooling set)',
  search: 'an exact search found none with fewer',
  none: 'nothing has to be stopped',
};

function planText({ sections, blanks }: NamedAccessTable, plan: WardPlan, { options }: PlanTableCommand): string {
  const { sites, lowerBound, proved, bound } = plan;
  const number = (n: number, one: string) => `${n} ${n === 1 ? one : `${one}s`}`;
  const sure = proved
    ? `proved fewest: ${BOUND_WORDS[bound]}`
    : `at least ${lowerBound}: ${BOUND_WORDS[bound]}; whether fewer than ${sites} do is open`;
  const width = Math.max(...[...sections, ...blanks].map((name) => shown(name).length));
  const lineOf = (name: string, depths: readonly number[]) => {
    const on = depths.flatMap((depth, s) => (depth > 0 ? [options.depths > 1 ? `${s + 1}:${depth}` : `${s + 1}`] : []));
    return `  ${shown(name).padEnd(width)}  ${on.join(' ') || 'none'}`;
  };
  const title = (what: string) => `${what}, by site${options.depths > 1 ? ' and depth' : ''}`;
  return `${[
    `${number(sections.length, 'section')}, ${number(blanks.length, 'blank')}: ${number(sites, 'site')}`,
    `  ${sure}`,
    title('Wards of each section'),
    ...sections.map((name, i) => lineOf(name, plan.wards[i])),
    title('Grooves of each blank'),
    ...blanks.map((name, j) => lineOf(name, plan.grooves[j])),
    cautionLine('plan'),
  ].join('\n')}\n`;
}
