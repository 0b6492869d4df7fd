import type { FileFault } from '../../../../interchange/json/file-fault.ts';
import type { FamilyFile } from '../../../../interchange/json/schema.ts';
import { accessOf } from '../../../../plan/access.ts';
import { commitFamily } from '../../edit-document.ts';
import type { Session } from '../../session.ts';
import type { PlanChange } from './near-plans.ts';

/**
 * Changes what the wards of the plan, or its blades, must be like, as one step of undo.
 *
 * @returns null where it was taken, else what is wrong.
 * @check tests/unit/app/sections-planning.test.ts
 */
export function changePlan(session: Session, { options, blade, shared }: PlanChange): readonly FileFault[] | null {
  const { documents, doors } = session;
  const file = documents.getState().document?.file;
  if (!file?.plan) return null;
  const chosen = options ? doors.access.setPlanOptions(file, options) : file;
  const bladed = blade ? doors.sections.setBladeLimits(chosen, blade) : chosen;
  return commitFamily(documents, doors, shared ? shareSections(session, bladed, shared) : bladed);
}

/** Gives the areas of each group of sections the section that is named first. */
function shareSections(
  { documents, doors }: Session,
  file: FamilyFile,
  shared: NonNullable<PlanChange['shared']>,
): FamilyFile {
  const plan = documents.getState().document?.family.plan;
  if (!plan) return file;
  const areas = new Map(accessOf(plan).sections.map((section) => [section.name, section.areas]));
  return shared.reduce((next, [first, ...others]) => {
    const ids = others.flatMap((name) => areas.get(name) ?? []);
    return ids.reduce((one, id) => doors.access.setAreaSection(one, id, first), next);
  }, file);
}
