import { countWord } from '../../../../family/count-word.ts';
import type { FileFault } from '../../../../interchange/json/file-fault.ts';
import type { FamilyDocument } from '../../../../interchange/json/read.ts';
import type { FamilyFile, ProfileFile } from '../../../../interchange/json/schema.ts';
import { commitFamily } from '../../edit-document.ts';
import type { Session } from '../../session.ts';
import type { ConfirmedPlan } from './drawn-sections.ts';
import { sectionsLookOf } from './sections-state.ts';
import { plannedProfiles } from './taken-standing.ts';

/** What taking a plan would do to the family: how many profiles come, are replaced, and are not from a plan. */
export interface TakingCounts {
  readonly openings: number;
  readonly blanks: number;
  readonly replaced: number;
  readonly replacedOpenings: number;
  /** Sections that were drawn by hand, or came from elsewhere. */
  readonly others: number;
  /** How many of those have the name of a section of the plan. */
  readonly namesakes: number;
}

/** See {@link TakingCounts}. */
export function takingCounts({ documents }: Session, { profiles }: ConfirmedPlan): TakingCounts {
  const { document } = documents.getState();
  const openings = profiles.filter(({ kind }) => kind === 'opening').length;
  const planned = document ? plannedProfiles(document) : [];
  const replaced = planned.length;
  const replacedOpenings = planned.filter(({ kind }) => kind === 'opening').length;
  const namesakes = document ? namesakesOf(document, profiles).length : 0;
  const all = document?.family.profiles.length ?? 0;
  return {
    openings,
    blanks: profiles.length - openings,
    replaced,
    replacedOpenings,
    namesakes,
    others: all - replaced,
  };
}

/** The sections that are not from a plan and have the name of one of these. */
function namesakesOf({ file }: FamilyDocument, profiles: ConfirmedPlan['profiles']): readonly ProfileFile[] {
  const names = new Set(profiles.map(({ kind, name }) => `${kind} ${name}`));
  return file.profiles.filter(({ planned, kind, name }) => planned !== true && names.has(`${kind} ${name}`));
}

/** What is put behind the names of sections that are kept, where the plan has sections of the same names. */
export const BEFORE_PLAN = ', before the plan';

/** The file with other names for the sections that are kept, so that no two are called alike. */
function withOwnNames(document: FamilyDocument, profiles: ConfirmedPlan['profiles']): FamilyFile {
  const alike = new Set(namesakesOf(document, profiles));
  const named = (text: string) => `${text.slice(0, 180)}${BEFORE_PLAN}`;
  return {
    ...document.file,
    profiles: document.file.profiles.map((profile) => {
      if (!alike.has(profile)) return profile;
      const { name, section } = profile;
      return { ...profile, name: named(name), ...(section !== undefined && { section: named(section) }) };
    }),
  };
}

/**
 * Puts the sections of a confirmed plan into the family, in place of those planned before, as one step of undo.
 *
 * @param keepOthers whether sections stay that are not from a plan.
 * @param rename whether those of them that have the name of a planned one take another.
 * @returns null where they were taken, else what is wrong.
 * @check tests/unit/app/taken-standing.test.ts
 */
export function takeSections(
  session: Session,
  confirmed: ConfirmedPlan,
  keepOthers: boolean,
  rename = false,
): readonly FileFault[] | null {
  const { documents, doors } = session;
  const { document } = documents.getState();
  if (!document) return null;
  const file = rename && keepOthers ? withOwnNames(document, confirmed.profiles) : document.file;
  const faults = commitFamily(documents, doors, doors.sections.takePlan(file, confirmed.profiles, keepOthers));
  if (faults) return faults;
  const { openings, blanks } = takingCounts(session, confirmed);
  const said = `${countWord(openings, 'keyway')} and ${countWord(blanks, 'blank')} were taken. Undo takes them back.`;
  sectionsLookOf(session).setState({ said });
  return null;
}
