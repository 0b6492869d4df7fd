import type { Family } from '../../../../family/family.ts';
import { firstFree } from '../../../../family/first-free.ts';
import type { Plan } from '../../../../family/plan.ts';
import type { FamilyFile } from '../../../../interchange/json/schema.ts';
import { accessOf } from '../../../../plan/access.ts';
import { FREE, MUST } from '../../../../plan/area-tree.ts';
import type { GrowReport } from '../../../../plan/grow.ts';
import type { GrowInput } from '../../../../plan/grow-family.ts';
import { withProfile } from '../../draw/change-profile.ts';
import type { AccessDoors } from '../access/access-doors.ts';
import { heldBlank } from '../sections/taken-standing.ts';

/** A section that was added to a file, with the ids of its keyway and its blank. */
export interface AddedSection {
  readonly file: FamilyFile;
  readonly section: string;
  readonly keywayId: string;
  readonly blankId: string;
}

/** The operations of the core that give a section its place in the plan. */
export type PlanDoors = Pick<AccessDoors, 'addArea' | 'setPlanOptions' | 'tickArea'>;

/** Whether the sections of a family were made from its plan, so that one that is added belongs in it. */
export function isPlannedFile({ plan, profiles }: FamilyFile): boolean {
  return plan !== undefined && profiles.some(({ planned }) => planned === true);
}

/**
 * A section that was added later as a part of the plan that the others were made from: an area of its own, which whoever
 * carries a blank that enters all enters too, and those whose blanks may enter are free to; one section less is kept room
 * for. Without this the plan would be short of a section, and the cards at its doors as well.
 *
 * @param family as it was before.
 * @returns the same where the family was not made from a plan.
 * @check tests/unit/app/growing.test.ts
 */
export function grownInPlan(
  doors: PlanDoors,
  added: AddedSection,
  { plan, profiles }: Family,
  { input, report }: { readonly input: Pick<GrowInput, 'allowed'>; readonly report: Pick<GrowReport, 'tops'> },
): AddedSection {
  if (!plan || !isPlannedFile(added.file)) return added;
  const blanks = profiles.filter(({ kind }) => kind === 'blank');
  const area = doors.addArea(added.file, { name: added.section });
  let file = doors.setPlanOptions(area.file, { reserve: Math.max(0, plan.reserve - 1) });
  for (const { id, holders } of accessOf(plan).blanks) {
    const held = heldBlank(blanks, id)?.id ?? '';
    if (!report.tops.includes(held) && !input.allowed.includes(held)) continue;
    const tick = report.tops.includes(held) ? MUST : FREE;
    for (const holder of holders) file = doors.tickArea(file, holder, area.id, tick);
  }
  const asPlanned = withProfile(file, added.keywayId, (entry) => ({ ...entry, planned: true }));
  return withPlannedBlank({ ...added, file: asPlanned }, withArea(plan, area.id, added.section));
}

/** Its blank as the one that the plan asks for, under the name by which it is known there; as it is where it asks for none. */
function withPlannedBlank(added: AddedSection, plan: Plan): AddedSection {
  const access = accessOf(plan);
  const place = access.sections.findIndex(({ name }) => name === added.section);
  const wanted = access.blanks.find(({ rank, sections }) => rank === 'base' && sections[0] === place);
  if (!wanted) return added;
  const taken = added.file.profiles.map(({ id }) => id);
  const id = firstFree(taken, (n) => (n === 1 ? wanted.id : `${wanted.id}-${n}`));
  const file = withProfile(added.file, added.blankId, (entry) => ({ ...entry, id, planned: true }));
  return { ...added, file, blankId: id };
}

function withArea(plan: Plan, id: string, name: string): Plan {
  return { ...plan, areas: [...plan.areas, { id, name }] };
}
