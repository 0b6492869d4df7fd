import type { FileFault } from '../../../interchange/json/file-fault.ts';
import { commitFamily } from '../edit-document.ts';
import type { Session } from '../session.ts';
import type { ConfirmedPlan } from './drawn-sections.ts';
import { sectionsLookOf } from './sections-state.ts';
import { countWord } from './sections-words.ts';
import { plannedProfiles } from './taken-standing.ts';

/** What taking a plan would do to the family: how many profiles come, are replaced, and are not from a plan. */
export interface TakingCounts {
  readonly openings: number;
  readonly blanks: number;
  readonly replaced: number;
  /** Sections that were drawn by hand, or came from elsewhere. */
  readonly others: number;
}

/** See {@link TakingCounts}. */
export function takingCounts({ documents }: Session, { profiles }: ConfirmedPlan): TakingCounts {
  const { document } = documents.getState();
  const openings = profiles.filter(({ kind }) => kind === 'opening').length;
  const replaced = document ? plannedProfiles(document).length : 0;
  const all = document?.family.profiles.length ?? 0;
  return { openings, blanks: profiles.length - openings, replaced, others: all - replaced };
}

/**
 * Puts the sections of a confirmed plan into the family, in place of those planned before, as one step of undo.
 *
 * @param keepOthers whether sections stay that are not from a plan.
 * @returns null where they were taken, else what is wrong.
 * @check tests/unit/app/taken-standing.test.ts
 */
export function takeSections(
  session: Session,
  confirmed: ConfirmedPlan,
  keepOthers: boolean,
): readonly FileFault[] | null {
  const { documents, doors } = session;
  const file = documents.getState().document?.file;
  if (!file) return null;
  const faults = commitFamily(documents, doors, doors.sections.takePlan(file, confirmed.profiles, keepOthers));
  if (faults) return faults;
  const { openings, blanks } = takingCounts(session, confirmed);
  const said = `${countWord(openings, 'keyway')} and ${countWord(blanks, 'blank')} were taken. Undo takes them back.`;
  sectionsLookOf(session).setState({ said });
  return null;
}
