import type { SolveOptions } from '../plan/ward-plan.ts';
import type { ParsedCommand } from './parse-command.ts';

/** What `plan --table` is asked for. */
export interface PlanTableCommand {
  readonly name: 'plan';
  readonly table: string;
  readonly json: boolean;
  readonly options: SolveOptions;
}

/** The options of `plan` that take a value. */
export const PLAN_OPTIONS = ['stops', 'depths', 'seconds'] as const;

/** How long a table is worked at where nothing is said, seconds. */
const USUAL_SECONDS = 20;

const MOST_SECONDS = 3_600;

interface PlanValues {
  readonly json?: boolean;
  readonly table?: string[];
  readonly stops?: string[];
  readonly depths?: string[];
  readonly seconds?: string[];
}

/** The command for a bare table, or what is wrong with its options. @check tests/unit/cli/run-plan-table.test.ts */
export function toPlanTableCommand({ json = false, table = [], ...given }: PlanValues): ParsedCommand {
  if (table.length !== 1) return { ok: false, fault: `--table is given ${table.length} times, give it once` };
  const wanted = [
    { option: 'stops', most: 3, least: 1, usual: 1 },
    { option: 'depths', most: 4, least: 1, usual: 1 },
    { option: 'seconds', most: MOST_SECONDS, least: 0, usual: USUAL_SECONDS },
  ] as const;
  for (const { option, least, most } of wanted) {
    const [text, ...more] = given[option] ?? [];
    if (more.length > 0) return { ok: false, fault: `--${option} is given ${more.length + 1} times, give it once` };
    if (text !== undefined && !(/^\d{1,5}$/.test(text) && Number(text) >= least && Number(text) <= most))
      return { ok: false, fault: `--${option} is "${text}", must be a whole number from ${least} to ${most}` };
  }
  const [stops, depths, seconds] = wanted.map(({ option, usual }) => Number(given[option]?.[0] ?? usual));
  const options = { stops, depths, seconds, mostSites: Number.POSITIVE_INFINITY } as SolveOptions;
  return { ok: true, command: { name: 'plan', table: table[0], json, options } };
}
