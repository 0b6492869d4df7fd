import type { PlanTableCommand } from './parse-plan.ts';
import { runPlanTable } from './run-plan-table.ts';
import type { Shell } from './shell.ts';

/** Plans: a bare table of who must enter what. @check tests/unit/cli/run-plan-table.test.ts */
export function runPlan(command: PlanTableCommand, shell: Shell): Promise<number> {
  return runPlanTable(command, shell);
}
