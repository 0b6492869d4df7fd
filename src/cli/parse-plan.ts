import type { SolveOptions } from '../plan/ward-plan.ts';

/** What `plan --table` is asked for. */
export interface PlanTableCommand {
  readonly name: 'plan';
  readonly table: string;
  readonly json: boolean;
  readonly options: SolveOptions;
}

/** What `plan` is asked for of a family file. */
export interface PlanFamilyCommand {
  readonly name: 'plan';
  readonly file: string;
  /** The family file that is written; undefined: none, the plan is only told. */
  readonly output?: string;
  /** Whether sections that were not planned are left out. */
  readonly replace: boolean;
  readonly json: boolean;
  /** How long fewer sites are looked for and a proof is tried. */
  readonly seconds: number;
}

type ParsedPlan<Asked> =
  | { readonly ok: true; readonly command: Asked }
  | { readonly ok: false; readonly fault: string };

/** The options of `plan` that take a value. */
export const PLAN_OPTIONS = ['stops', 'depths', 'seconds'] as const;

/** How long a table is worked at where nothing is said, seconds. */
const USUAL_SECONDS = 20;

const MOST_SECONDS = 3_600;

interface PlanValues {
  readonly json?: boolean;
  readonly table?: string[];
  readonly output?: string[];
  readonly replace?: boolean;
  readonly stops?: string[];
  readonly depths?: string[];
  readonly seconds?: string[];
}

/** The command for a plan or a bare table, or what is wrong with the words. @check tests/unit/cli/run-plan-family.test.ts, tests/unit/cli/run-plan-table.test.ts */
export function toPlanCommand(
  file: string | undefined,
  values: PlanValues,
): ParsedPlan<PlanFamilyCommand | PlanTableCommand> {
  if (file === undefined) {
    const [table] = values.table ?? [];
    if (table === undefined) return { ok: false, fault: '"plan" needs the name of a family file, or --table' };
    const stray = values.output ? 'output' : values.replace && 'replace';
    return stray
      ? { ok: false, fault: `--table writes no family: leave out --${stray}` }
      : toPlanTableCommand(table, values);
  }
  const { json = false, replace = false, output = [] } = values;
  const stray = (['table', 'stops', 'depths'] as const).find((option) => values[option]);
  if (stray === 'table') return { ok: false, fault: 'give a family file or --table, not both' };
  if (stray) return { ok: false, fault: `--${stray} is for --table: a family file says it in its plan` };
  const numbers = planNumbers(values);
  if (typeof numbers === 'string') return { ok: false, fault: numbers };
  const [target] = output;
  const given = target === undefined ? {} : { output: target };
  return { ok: true, command: { name: 'plan', file, ...given, replace, json, seconds: numbers.seconds } };
}

/** The command for a bare table, or what is wrong with its numbers. */
function toPlanTableCommand(table: string, values: PlanValues): ParsedPlan<PlanTableCommand> {
  const numbers = planNumbers(values);
  if (typeof numbers === 'string') return { ok: false, fault: numbers };
  const options = { ...numbers, mostSites: Number.POSITIVE_INFINITY };
  return { ok: true, command: { name: 'plan', table, json: values.json ?? false, options } };
}

/** The options that take a number. */
const NUMBERS = [
  { option: 'stops', most: 3, least: 1, usual: 1 },
  { option: 'depths', most: 4, least: 1, usual: 1 },
  { option: 'seconds', most: MOST_SECONDS, least: 0, usual: USUAL_SECONDS },
] as const;

/** The numbers of a plan, or what is wrong with the first that is not sound. */
function planNumbers(given: PlanValues): Pick<SolveOptions, 'stops' | 'depths' | 'seconds'> | string {
  for (const { option, least, most } of NUMBERS) {
    const [text] = given[option] ?? [];
    if (text !== undefined && !(/^\d{1,5}$/.test(text) && Number(text) >= least && Number(text) <= most))
      return `--${option} is "${text}", must be a whole number from ${least} to ${most}`;
  }
  const [stops, depths, seconds] = NUMBERS.map(({ option, usual }) => Number(given[option]?.[0] ?? usual));
  return { stops, depths, seconds } as Pick<SolveOptions, 'stops' | 'depths' | 'seconds'>;
}
