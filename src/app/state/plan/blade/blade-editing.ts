import { toFileLength } from '../../../../family/file-length.ts';
import type { BladeLimits } from '../../../../family/plan.ts';
import type { FileFault } from '../../../../interchange/json/file-fault.ts';
import type { MoreRoom } from '../../../../plan/one-more-site.ts';
import { leastWebOf, type PlanGap } from '../../../../plan/plan-gap.ts';
import { editFamily } from '../../edit-document.ts';
import type { Session } from '../../session.ts';
import { changePlan } from '../sections/sections-choices.ts';
import { bladeLookOf } from './blade-state.ts';

/** The gap that planned blades run with; the family's own, nanometres. */
export type GapField = 'runningClearance' | 'tolerance' | 'leastWeb';

/** Changes a limit of the blades, as one step of undo; what is refused is told at its field. */
export function changeLimit(session: Session, limits: Partial<BladeLimits>): void {
  tell(session, Object.keys(limits)[0], changePlan(session, { blade: limits }));
}

/** Changes how many depths a ward may have at one site. */
export function changeDepths(session: Session, depths: number): void {
  tell(session, 'depths', changePlan(session, { options: { depths } }));
}

/** Changes the running clearance, the tolerance or the least web of the family; a least web of 0 is none. */
export function changeGap(session: Session, field: GapField, nm: number): void {
  const refused = editFamily(session, (file) => {
    if (field === 'leastWeb') return session.doors.mill.putLeastWeb(file, nm > 0 ? nm : null);
    return { ...file, [field]: toFileLength(nm, file.units) };
  });
  tell(session, field, refused);
}

/** Changes the one limit that makes room for one more site. */
export function takeRoom(session: Session, blade: BladeLimits, gap: PlanGap, { field, by }: MoreRoom): void {
  if (field === 'leastWeb') changeGap(session, field, leastWebOf(gap) + by);
  else if (field === 'sides') changeLimit(session, { sides: 'both' });
  else changeLimit(session, { [field]: blade[field] + by });
}

/** Puts the common small blade, which every plan begins with, in place of the limits. */
export function beginBladeAnew(session: Session): void {
  const { emptyPlan, putPlan } = session.doors.access;
  const refused = editFamily(session, (file) =>
    putPlan(file, { ...(file.plan ?? emptyPlan(file.units)), blade: emptyPlan(file.units).blade }),
  );
  tell(session, 'blade', refused);
}

function tell(session: Session, field: string, faults: readonly FileFault[] | null): void {
  const [fault] = faults ?? [];
  const refused = fault ? { field, words: `It ${fault.what.replace(/^It /, '')}. ${fault.cure}` } : null;
  bladeLookOf(session).setState({ refused });
}
