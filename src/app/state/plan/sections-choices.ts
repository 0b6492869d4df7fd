import type { FileFault } from '../../../interchange/json/file-fault.ts';
import { commitFamily } from '../edit-document.ts';
import type { Session } from '../session.ts';
import type { PlanChange } from './near-plans.ts';

/** Most sections that room may be kept for. */
export const MOST_RESERVE = 200;

/**
 * Changes what the wards of the plan, or its blades, must be like, as one step of undo.
 *
 * @returns null where it was taken, else what is wrong.
 * @check tests/unit/app/sections-planning.test.ts
 */
export function changePlan(session: Session, { options, blade }: PlanChange): readonly FileFault[] | null {
  const { documents, doors } = session;
  const file = documents.getState().document?.file;
  if (!file?.plan) return null;
  const { setPlanOptions, setBladeLimits } = doors.sections;
  const chosen = options ? setPlanOptions(file, options) : file;
  return commitFamily(documents, doors, blade ? setBladeLimits(chosen, blade) : chosen);
}
