import { entrantsOf, type FileUnits, openingsOf } from '../../../family/family.ts';
import { toFileLength } from '../../../family/file-length.ts';
import { firstFree } from '../../../family/first-free.ts';
import { hyphenedName } from '../../../family/plain-name.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import type { FileFault } from '../../../interchange/json/file-fault.ts';
import type { FamilyFile, ProfileFile } from '../../../interchange/json/schema.ts';
import type { Profile, ProfileKind } from '../../../profile/profile.ts';
import { openText } from '../document-state.ts';
import { commitFamily } from '../edit-document.ts';
import { pickProfile } from '../selection-state.ts';
import type { Session } from '../session.ts';
import { withProfile } from './change-profile.ts';
import type { NewHead } from './draw-state.ts';
import { editedVertices } from './draw-state.ts';

/** What became of an edit of the family: null where it was taken, else what is wrong with it. */
export type EditAnswer = readonly FileFault[] | null;

/** What can be said of a section apart from its shape; lengths in nanometres, null where nothing is said. */
export interface SectionFields {
  readonly kind: ProfileKind;
  readonly name: string;
  readonly section: string | null;
  readonly chambers: number | null;
  readonly tolerance: number | null;
  readonly note: string | null;
}

/** What can be said of a family apart from its sections; lengths in nanometres, null where nothing is said. */
export interface FamilyFields {
  readonly name: string;
  readonly runningClearance: number;
  readonly tolerance: number | null;
  readonly tiltLimitDeg: number | null;
  readonly note: string | null;
}

/** Adds a drawn section and picks it, as one step of undo. */
export function addSection(session: Session, head: NewHead, vertices: readonly Vertex[]): EditAnswer {
  const { documents, doors, selection } = session;
  const { document } = documents.getState();
  if (!document) return null;
  const { file, id } = doors.addSection(document.file, head, { drawn: vertices });
  const faults = commitFamily(documents, doors, file);
  if (!faults) pickProfile(selection, { id, kind: head.kind });
  return faults;
}

/** Adds a plain blade or slot, milled without a groove yet, and picks it, as one step of undo; nanometres. */
export function addPlainSection(session: Session, head: NewHead, thickness: number, height: number): EditAnswer {
  const { documents, doors, selection } = session;
  const { document } = documents.getState();
  if (!document) return null;
  const milled = { thickness, height, backRadius: 0, grooves: [] };
  const { file, id } = doors.addSection(document.file, head, { milled });
  const faults = commitFamily(documents, doors, file);
  if (!faults) pickProfile(selection, { id, kind: head.kind });
  return faults;
}

/** Adds a copy of a section after it, with every field that it has, and picks it. */
export function duplicateSection(session: Session, { id, kind, name, ...profile }: Profile): EditAnswer {
  const { documents, doors, selection } = session;
  const { document } = documents.getState();
  const source = document?.file.profiles.find((entry) => entry.id === id);
  if (!document || !source) return null;
  const head: NewHead = { kind, name: copyName(document.file, name), afterId: id };
  const added = doors.addSection(document.file, head, { drawn: editedVertices({ id, kind, name, ...profile }) });
  const copy: ProfileFile = { ...source, id: added.id, name: head.name };
  const file = withProfile(added.file, added.id, () => copy);
  const faults = commitFamily(documents, doors, file);
  if (!faults) pickProfile(selection, { id: added.id, kind });
  return faults;
}

/** A name that no section of the family has: "Heron blank, copy", then "Heron blank, copy 2". */
function copyName({ profiles }: FamilyFile, name: string): string {
  const stem = name.replace(/, copy( \d+)?$/, '');
  const taken = profiles.map((entry) => entry.name);
  return firstFree(taken, (n) => `${stem}, copy${n === 1 ? '' : ` ${n}`}`);
}

/** Says of a section what was typed, as one step of undo; fields that were not asked for stay. */
export function changeSection(session: Session, id: string, fields: SectionFields): EditAnswer {
  const { documents, doors, selection } = session;
  const { document } = documents.getState();
  if (!document) return null;
  const { units } = document.file;
  const file = withProfile(document.file, id, (entry) =>
    withFields(entry, {
      kind: fields.kind,
      name: fields.name,
      section: fields.section,
      chambers: fields.chambers,
      tolerance: fields.tolerance === null ? null : toFileLength(fields.tolerance, units),
      note: fields.note,
    }),
  );
  const faults = commitFamily(documents, doors, file);
  if (!faults) pickProfile(selection, { id, kind: fields.kind });
  return faults;
}

/** Says of a keyway whether its section was squeezed in later between its neighbours, as one step of undo. */
export function markInBetween({ documents, doors }: Session, id: string, isSo: boolean): EditAnswer {
  const { document } = documents.getState();
  if (!document) return null;
  const file = withProfile(document.file, id, ({ inBetween: _, ...entry }) =>
    isSo ? { ...entry, inBetween: true } : entry,
  );
  return commitFamily(documents, doors, file);
}

/** The remark that the file holds of a section or, without an id, of the family. */
export function noteOf({ documents }: Session, id?: string): string {
  const file = documents.getState().document?.file;
  const note = id === undefined ? file?.note : file?.profiles.find((entry) => entry.id === id)?.note;
  return note ?? '';
}

/**
 * Moves a section up or down among those of the tray's list that it stands in, as one step of undo.
 *
 * @param steps -1 up, 1 down.
 * @returns null where it was moved or cannot be moved further.
 */
export function moveSection(session: Session, id: string, steps: -1 | 1): EditAnswer {
  const { documents, doors } = session;
  const { document } = documents.getState();
  const neighbour = document && neighbourOf(session, id, steps);
  if (!document || !neighbour) return null;
  const { profiles } = document.file;
  const [from, to] = [id, neighbour.id].map((wanted) => profiles.findIndex((entry) => entry.id === wanted));
  const moved = profiles.with(from, profiles[to]).with(to, profiles[from]);
  return commitFamily(documents, doors, { ...document.file, profiles: moved });
}

/** The section that stands before or after another in its list of the tray; null at the list's end. */
export function neighbourOf({ documents }: Session, id: string, steps: -1 | 1): Profile | null {
  const family = documents.getState().document?.family;
  if (!family) return null;
  const list = [openingsOf(family), entrantsOf(family)].find((some) => some.some((profile) => profile.id === id)) ?? [];
  return list[list.findIndex((profile) => profile.id === id) + steps] ?? null;
}

/** Takes a section out of the family, as one step of undo; its neighbour is picked. The last one stays. */
export function deleteSection(session: Session, { id, kind }: Pick<Profile, 'id' | 'kind'>): EditAnswer {
  const { documents, doors, selection } = session;
  const { document } = documents.getState();
  if (!document || document.file.profiles.length < 2) return null;
  const next = neighbourOf(session, id, 1) ?? neighbourOf(session, id, -1);
  const profiles = document.file.profiles.filter((entry) => entry.id !== id);
  if (next) pickProfile(selection, { id: next.id, kind });
  return commitFamily(documents, doors, { ...document.file, profiles });
}

/** Says of the family what was typed, as one step of undo. */
export function changeFamilyFields(session: Session, fields: FamilyFields): EditAnswer {
  const { documents, doors } = session;
  const { document } = documents.getState();
  if (!document) return null;
  const { file } = document;
  const next = withFields(file, {
    name: fields.name,
    runningClearance: toFileLength(fields.runningClearance, file.units),
    tolerance: fields.tolerance === null ? null : toFileLength(fields.tolerance, file.units),
    tiltLimitDeg: fields.tiltLimitDeg,
    note: fields.note,
  });
  return commitFamily(documents, doors, next);
}

/** The size of what a new family begins with, nanometres: a common thickness and height of a small blade. */
export const FIRST_BLADE = { width: 2_000_000, height: 8_000_000 };

/** Opens a new family with one plain blank and the keyway that it goes into with the running clearance. */
export function newFamily(session: Session, name: string, units: FileUnits, runningClearance: number): boolean {
  const { width, height } = FIRST_BLADE;
  const plain = (thickness: number, tall: number) => ({
    thickness: toFileLength(thickness, units),
    height: toFileLength(tall, units),
    backRadius: 0,
    grooves: [],
  });
  const gap = 2 * runningClearance;
  const file: FamilyFile = {
    format: 'sectionary-family',
    version: 1,
    name,
    units,
    runningClearance: toFileLength(runningClearance, units),
    profiles: [
      {
        id: 'first-keyway',
        kind: 'opening',
        section: 'First',
        name: 'First keyway',
        milled: plain(width + gap, height + gap),
      },
      {
        id: 'first-blank',
        kind: 'blank',
        section: 'First',
        name: 'First blank',
        milled: plain(width, height),
      },
    ],
  };
  return openText(session.documents, session.doors, session.doors.writeFamily(file), fileNameOf(name));
}

/** Tolerance to either side that a new plan begins with, nanometres: 0.01 mm, 0.0004 in. A choice of our own, no source. */
const PLAN_TOLERANCE = { mm: 10_000, in: 10_160 } as const;

/** Opens a new family without a section, with an empty plan and blades that can be made, and shows its areas. */
export function newPlan(session: Session, name: string, units: FileUnits, runningClearance: number): boolean {
  const file: FamilyFile = {
    format: 'sectionary-family',
    version: 1,
    name,
    units,
    runningClearance: toFileLength(runningClearance, units),
    tolerance: toFileLength(PLAN_TOLERANCE[units], units),
    profiles: [],
    plan: session.doors.access.emptyPlan(units),
  };
  const isOpen = openText(session.documents, session.doors, session.doors.writeFamily(file), fileNameOf(name));
  if (isOpen) session.plan.setState({ sheet: 'access' });
  return isOpen;
}

const fileNameOf = (name: string): string => `${hyphenedName(name) || 'family'}.json`;

/** A value with some fields set, those that are null left out; a field that stays keeps its place and its digits. */
function withFields<T extends object>(value: T, fields: Readonly<Record<string, string | number | null>>): T {
  const set = Object.entries(fields);
  const gone = new Set(set.filter(([, field]) => field === null).map(([name]) => name));
  const kept = Object.entries({ ...value, ...fields }).filter(([name]) => !gone.has(name));
  return Object.fromEntries(kept) as T;
}
