import { cautionLine } from '../family/cautions.ts';
import type { Family } from '../family/family.ts';
import type { Plan } from '../family/plan.ts';
import type { FamilyDocument } from '../interchange/json/read.ts';
import { takePlan } from '../interchange/json/take-plan.ts';
import { writeFamily } from '../interchange/json/write.ts';
import { catalogue } from '../jobs/catalogue.ts';
import { accessOf, reservedTable } from '../plan/access.ts';
import type { DrawnPlan } from '../plan/drawn-plan.ts';
import { planGapOf } from '../plan/plan-gap.ts';
import type { Access } from '../plan/planned-access.ts';
import { type SiteLayout, wardSites } from '../plan/ward-sites.ts';
import type { PlanFamilyCommand } from './parse-plan.ts';
import { type PlannedFamily, plannedJson, plannedText } from './say-plan.ts';
import { EXIT, type Shell } from './shell.ts';
import { writeFiles } from './write-files.ts';

/**
 * Plans the family of a file: wards for its areas and holders, drawn, judged within tolerance, written, and told. Returns
 * the exit code: 1 where the blade has no room or a pair is not confirmed; then nothing is written.
 *
 * @check tests/unit/cli/run-plan-family.test.ts
 */
export async function runPlanFamily(
  document: FamilyDocument,
  command: PlanFamilyCommand,
  shell: Shell,
): Promise<number> {
  const { family } = document;
  const { output } = command;
  const hindrance = hindranceOf(family, command, shell);
  if (hindrance !== null || !family.plan) {
    shell.warn(`${hindrance}\n`);
    return EXIT.badInput;
  }
  const planned = await planOf(family, family.plan, command, shell);
  if (!planned.drawn.ok) {
    shell.warn(`${command.file}: ${refusal(planned.drawn)}\n`);
    return EXIT.notConfirmed;
  }
  if (output !== undefined) {
    const file = takePlan(document.file, planned.drawn.profiles, !command.replace);
    const code = writeFiles([{ name: output, content: writeFamily(file) }], command.file, shell);
    if (code !== EXIT.done) return code;
    shell.warn(`${output}: ${planned.drawn.profiles.length} planned sections written\n`);
  }
  const told = { ...planned, drawn: planned.drawn };
  shell.print(command.json ? plannedJson(told) : `${plannedText(told)}\n${cautionLine('plan')}\n`);
  return EXIT.done;
}

/** Why nothing can be planned at all. */
function hindranceOf({ plan }: Family, { file, output }: PlanFamilyCommand, shell: Shell): string | null {
  if (output !== undefined && shell.isSameFile(file, output))
    return `${output}: this is the plan itself: give another name after -o`;
  if (!plan) return `${file}: it has no plan: name areas and holders under "plan"`;
  const access = accessOf(plan);
  const contradictions = access.faults.filter(({ kind }) => kind === 'contradiction');
  if (contradictions.length > 0) return contradictions.map(({ what, cure }) => `${file}: ${what} ${cure}`).join('\n');
  if (access.sections.length === 0) return `${file}: the plan has no areas`;
  if (access.blanks.length === 0)
    return `${file}: the plan asks for no blank: name holders, or let base blanks be made`;
  return null;
}

async function planOf(
  family: Family,
  plan: Plan,
  { seconds }: PlanFamilyCommand,
  shell: Shell,
): Promise<Omit<PlannedFamily, 'drawn'> & { readonly access: Access; readonly drawn: DrawnPlan }> {
  const gap = planGapOf(family);
  const access = accessOf(plan);
  const layout: SiteLayout = wardSites(plan.blade, gap, plan.depths);
  // A blade that cannot be made is told without a long search.
  const vain = layout.sites.length === 0 || layout.limits.some(({ kind }) => kind === 'fault');
  const options = {
    stops: plan.stops as 1 | 2 | 3,
    depths: plan.depths as 1 | 2 | 3 | 4,
    mostSites: layout.sites.length,
    seconds: vain ? 0 : seconds,
  };
  const wardPlan = await catalogue.solvePlan({ table: reservedTable(access, plan.reserve), options }, shell.jobs);
  const drawn = await catalogue.drawPlan({ plan, access, wardPlan, gap }, shell.jobs);
  return { plan, access, layout, wardPlan, drawn };
}

function refusal({ why, pairs }: Extract<DrawnPlan, { ok: false }>): string {
  const lines = why.map(({ words, cure }) => `${words}. ${cure}`);
  const head = pairs.length > 0 ? 'the plan is not confirmed' : 'the plan cannot be drawn';
  return `${head}; nothing is written.\n${lines.map((line) => `  ${line}`).join('\n')}`;
}
