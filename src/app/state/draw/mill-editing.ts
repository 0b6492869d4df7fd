import type { Units } from '../../../family/length-text.ts';
import type { FileFault } from '../../../interchange/json/file-fault.ts';
import { checkMilled } from '../../../profile/check-milled.ts';
import {
  addGroove,
  type BladeEnd,
  type BladeField,
  copyOfGroove,
  type GrooveField,
  mirrorMilled,
  moveToOtherFace,
  newGroove,
  newStep,
  removeGroove,
  setBladeSize,
  setGroove,
} from '../../../profile/edit-milled.ts';
import type { GrooveSide, Milled, Profile } from '../../../profile/profile.ts';
import { commitFamily, dropEdit, endEdit, previewFamily } from '../edit-document.ts';
import type { Session } from '../session.ts';
import { type MillDraft, type MillState, millFor, millOf } from './mill-state.ts';
import { lengthText } from './mill-words.ts';

/** The description in hand: the one last wanted, sound or not, else that of the profile. Null for a drawn profile. */
export function wantedMilled(state: MillState, profile: Profile): Milled | null {
  return draftOf(state, profile)?.milled ?? profile.milled ?? null;
}

/** The description last wanted that could not be milled; null where there is none. */
export function draftOf(state: MillState, profile: Profile): MillDraft | null {
  const { draft } = millFor(state, profile.id);
  return draft && draft.base === profile.milled ? draft : null;
}

/** Which groove is chosen; null where none is or the list is shorter by now. */
export function chosenGroove(state: MillState, profile: Profile): number | null {
  const { chosen } = millFor(state, profile.id);
  const count = wantedMilled(state, profile)?.grooves.length ?? 0;
  return chosen !== null && chosen < count ? chosen : null;
}

function change(session: Session, profile: Profile, part: Partial<MillState>): void {
  millOf(session).setState((s) => ({ ...millFor(s, profile.id), letGo: '', ...part }));
}

/** Chooses a groove, or none. */
export function chooseGroove(session: Session, profile: Profile, chosen: number | null): void {
  change(session, profile, { chosen });
}

type Sources = MillDraft['sources'];

function sourcesOf(state: MillState, profile: Profile): Sources {
  return draftOf(state, profile)?.sources ?? (profile.milled?.grooves ?? []).map((_, i) => i);
}

/**
 * Wants another description: where it can be milled it becomes the profile's, else it stays a draft with its faults, and
 * the last sound blade stays.
 *
 * @returns whether it was taken.
 */
function want(session: Session, profile: Profile, milled: Milled, sources: Sources, isWhole: boolean): boolean {
  const units = session.settings.getState().units;
  const faults = checkMilled(milled, (nm) => lengthText(nm, units), profile.kind);
  if (faults.length > 0) {
    // A gesture may have moved on since the caller saw the profile.
    const base = presentMilled(session, profile) ?? milled;
    change(session, profile, { draft: { base, milled, sources, faults }, told: '' });
    return false;
  }
  const refused = take(session, profile, milled, sources, isWhole);
  change(session, profile, { draft: null, told: refused ? `Not taken: ${refused[0].what}. ${refused[0].cure}` : '' });
  return !refused;
}

function presentMilled({ documents }: Session, { id }: Profile): Milled | undefined {
  return documents.getState().document?.family.profiles.find((profile) => profile.id === id)?.milled;
}

function take(
  session: Session,
  { id }: Profile,
  milled: Milled,
  sources: Sources,
  isWhole: boolean,
): readonly FileFault[] | null {
  const { documents, doors } = session;
  const { document, editedFrom } = documents.getState();
  if (!document) return null;
  // Places are those in the document as the gesture began.
  const from = isWhole ? document.file : (editedFrom ?? document).file;
  const next = doors.mill.putMilled(from, id, milled, sources);
  return (isWhole ? commitFamily : previewFamily)(documents, doors, next);
}

/** One whole edit of the description in hand, a step of undo of its own where it can be milled. */
function edit(session: Session, profile: Profile, by: (milled: Milled) => Milled, sources?: (s: Sources) => Sources) {
  const state = millOf(session).getState();
  const milled = wantedMilled(state, profile);
  if (!milled) return false;
  const before = sourcesOf(state, profile);
  return want(session, profile, by(milled), sources ? sources(before) : before, true);
}

/** Sets a size of the blade; nanometres. Returns whether the blade could be milled so and was taken. */
export function putBladeSize(session: Session, profile: Profile, field: BladeField, nm: number): boolean {
  return edit(session, profile, (milled) => setBladeSize(milled, field, nm));
}

/** Sets a size of a groove; nanometres, the flank in radians. */
export function putGroove(
  session: Session,
  profile: Profile,
  index: number,
  field: GrooveField,
  value: number,
): boolean {
  return edit(session, profile, (milled) => setGroove(milled, index, field, value));
}

/** Sizes of a new groove. */
const USUAL = {
  mm: { width: 700_000, depth: 600_000, step: 10_000 },
  in: { width: 711_200, depth: 609_600, step: 12_700 },
} as const;

/** Adds a groove in the largest free stretch of a face and chooses it; says so where there is no room. */
export function addNewGroove(session: Session, profile: Profile, side: GrooveSide): void {
  add(
    session,
    profile,
    (milled, units) => newGroove(milled, side, USUAL[units]),
    `no room for a groove on the ${side}`,
  );
}

/** Adds a step at an end of a face and chooses it. */
export function addNewStep(session: Session, profile: Profile, side: GrooveSide, end: BladeEnd): void {
  const where = `at the ${end} on the ${side}`;
  add(session, profile, (milled, units) => newStep(milled, side, end, USUAL[units]), `no room for a step ${where}`);
}

/** Adds a copy of a groove where there is room and chooses it. */
export function duplicateGroove(session: Session, profile: Profile, index: number): void {
  add(
    session,
    profile,
    (milled, units) => copyOfGroove(milled, index, USUAL[units].step),
    'no room for another groove of this width',
  );
}

function add(
  session: Session,
  profile: Profile,
  make: (milled: Milled, units: Units) => Milled['grooves'][number] | null,
  otherwise: string,
): void {
  const milled = wantedMilled(millOf(session).getState(), profile);
  const groove = milled && make(milled, session.settings.getState().units);
  if (!milled || !groove) {
    change(session, profile, { told: `There is ${otherwise}.` });
    return;
  }
  edit(
    session,
    profile,
    (m) => addGroove(m, groove),
    (s) => [...s, null],
  );
  change(session, profile, { chosen: milled.grooves.length });
}

/** Takes a groove out; its neighbour in the list is chosen. */
export function takeOutGroove(session: Session, profile: Profile, index: number): void {
  const count = wantedMilled(millOf(session).getState(), profile)?.grooves.length ?? 0;
  edit(
    session,
    profile,
    (m) => removeGroove(m, index),
    (s) => s.toSpliced(index, 1),
  );
  change(session, profile, { chosen: count > 1 ? Math.min(index, count - 2) : null });
}

/** Mills a groove into the other face instead. */
export function turnGroove(session: Session, profile: Profile, index: number): void {
  edit(session, profile, (m) => moveToOtherFace(m, index));
}

/** Mirrors the whole blade. */
export function mirrorBlade(session: Session, profile: Profile): void {
  edit(session, profile, mirrorMilled);
}

/** Goes back to the last sound blade; returns whether there was a draft. */
export function dropDraft(session: Session, profile: Profile): boolean {
  const had = draftOf(millOf(session).getState(), profile) !== null;
  if (had) change(session, profile, { draft: null, told: '' });
  return had;
}

/** The blade that a gesture under way wants; what can be milled is shown at once. */
export function previewMilled(session: Session, profile: Profile, milled: Milled): void {
  const sources = milled.grooves.map((_, i) => i);
  want(session, profile, milled, sources, false);
}

/** Ends a gesture: what was taken is one step of undo. What could not be milled is let go. */
export function finishMilled(session: Session, profile: Profile): void {
  endEdit(session.documents);
  change(session, profile, { drag: null, draft: null });
}

/** Gives a gesture up: the blade is as it was. */
export function giveUpMilled(session: Session, profile: Profile): void {
  dropEdit(session.documents);
  change(session, profile, { drag: null, draft: null });
}

/** Sets the least web of the family, nanometres, or sets none. */
export function setLeastWeb(session: Session, nm: number | null): void {
  const { documents, doors } = session;
  const { document } = documents.getState();
  if (document) commitFamily(documents, doors, doors.mill.putLeastWeb(document.file, nm));
}
