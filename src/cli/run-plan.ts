import type { FamilyDocument } from '../interchange/json/read.ts';
import type { PlanFamilyCommand, PlanTableCommand } from './parse-plan.ts';
import { runPlanFamily } from './run-plan-family.ts';
import { runPlanTable } from './run-plan-table.ts';
import { EXIT, type Shell } from './shell.ts';

/**
 * Plans: the family of a file, or a bare table of who must enter what; returns the exit code.
 *
 * @param open reads a family file, and says what is wrong with it.
 * @check tests/unit/cli/run-plan-table.test.ts, tests/unit/cli/run-plan-family.test.ts
 */
export async function runPlan(
  command: PlanTableCommand | PlanFamilyCommand,
  shell: Shell,
  open: (file: string, shell: Shell) => FamilyDocument | null,
): Promise<number> {
  if ('table' in command) return runPlanTable(command, shell);
  const document = open(command.file, shell);
  return document ? runPlanFamily(document, command, shell) : EXIT.badInput;
}
