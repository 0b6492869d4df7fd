import { boxOf, NM_PER_INCH, NM_PER_MM } from '../../../geom/point.ts';
import type { FamilyFile, PictureFile } from '../../../interchange/json/schema.ts';
import { greyOfLight } from '../../../trace/gray-picture.ts';
import { makePictureFrame, type PictureFrame, type PicturePoint } from '../../../trace/picture-scale.ts';
import { suggestThreshold } from '../../../trace/suggest-threshold.ts';
import { commitFamily } from '../edit-document.ts';
import type { Session } from '../session.ts';
import { withProfile } from './change-profile.ts';
import {
  changeUnderlay,
  MARK_NAMES,
  type MarkName,
  marksOf,
  NOT_TRACED,
  type Told,
  type TraceHand,
  type TraceStep,
  toldOf,
  type Underlay,
  type UnderlayImage,
  underlayOf,
  underlaysOf,
} from './underlay-state.ts';

/** How strongly a picture is shown at first. */
const FIRST_OPACITY = 0.6;

/** Most characters that all pictures of a family may take, so that the file stays below what is read. */
const MOST_KEPT = 15_000_000;

/** Smallest patch that is outlined, square nanometres: 0.02 square millimetres. */
const FIRST_AREA = 0.02 * NM_PER_MM ** 2;

/** Lays a picture under a profile, its middle on the profile's; one that was there goes. */
export function showPicture(session: Session, id: string, image: UnderlayImage): void {
  const store = underlaysOf(session);
  const told = freshTold(session, id);
  const made = makePictureFrame(image.size, marksOf(told));
  if (!made.ok) {
    store.setState({ reading: null, trouble: { id, what: made.fault.what, cure: made.fault.cure } });
    return;
  }
  const before = underlayOf(session, id);
  before?.image.bitmap.close();
  const underlay = freshUnderlay(image, told, made.frame, (before?.opened ?? 0) + 1);
  store.setState(({ underlays }) => ({ underlays: { ...underlays, [id]: underlay }, reading: null, trouble: null }));
  if (before?.kept) keepPicture(session, id);
}

/** Lays a picture under a profile that its file keeps. */
export function showKeptPicture(session: Session, id: string, image: UnderlayImage, kept: PictureFile): void {
  showPicture(session, id, image);
  changeUnderlay(session, id, { kept, step: null });
  followKept(session, id, kept);
}

function freshUnderlay(image: UnderlayImage, told: Told, frame: PictureFrame, opened: number): Underlay {
  const hand: TraceHand = {
    grey: greyOfLight(suggestThreshold(image.light)),
    ...{ shade: 'dark', blur: 0, leastArea: FIRST_AREA, tolerance: null, sharpen: true },
  };
  return {
    ...{ image, told, frame, hand, opened, opacity: FIRST_OPACITY, tracing: NOT_TRACED },
    ...{ fault: null, step: 'scale', placing: null, held: null, kept: null },
  };
}

/** What is told of a picture that nobody has marked yet. */
function freshTold({ documents, settings }: Session, id: string): Told {
  const profile = documents.getState().document?.family.profiles.find((p) => p.id === id);
  const box = boxOf(profile?.ring ?? [{ x: 0, y: 0 }]);
  const middle = { x: Math.round((box.minX + box.maxX) / 2), y: Math.round((box.minY + box.maxY) / 2) };
  const inches = settings.getState().units === 'in';
  const lengths = inches
    ? { distance: NM_PER_INCH / 2, width: NM_PER_INCH, height: NM_PER_INCH / 2 }
    : { distance: 10 * NM_PER_MM, width: 20 * NM_PER_MM, height: 10 * NM_PER_MM };
  return { points: {}, ...lengths, lies: 'upright', turn: 0, middle };
}

/**
 * Tells more of a picture. Where it makes a sound frame the picture lies by it at once, and a kept picture is kept so, as
 * one step of undo; else the last frame stays and the fault is told.
 *
 * @returns whether the frame was taken.
 * @check tests/unit/app/underlay.test.ts
 */
export function tell(session: Session, id: string, change: Partial<Told>): boolean {
  const underlay = underlayOf(session, id);
  if (!underlay) return false;
  const told = { ...underlay.told, ...change };
  const made = makePictureFrame(underlay.image.size, marksOf(told));
  if (!made.ok) {
    changeUnderlay(session, id, { told, fault: made.fault });
    return false;
  }
  const moved = underlay.frame.toProfile.some((cell, i) => cell !== made.frame.toProfile[i]);
  const opened = underlay.opened + (moved ? 1 : 0);
  changeUnderlay(session, id, { told, frame: made.frame, fault: null, opened });
  if (underlay.kept && moved) keepPicture(session, id);
  return true;
}

/** Puts a mark on a place of the picture, or takes it away; a place outside of the picture goes to its edge. */
export function putMark(session: Session, id: string, name: MarkName, at: PicturePoint | null): void {
  const underlay = underlayOf(session, id);
  if (!underlay) return;
  const { [name]: _before, ...others } = underlay.told.points;
  const { width, height } = underlay.image.size;
  const inside = at && { x: clamp(at.x, width), y: clamp(at.y, height) };
  tell(session, id, { points: inside ? { ...others, [name]: inside } : others });
}

function clamp(value: number, most: number): number {
  return Number(Math.min(most, Math.max(0, value)).toFixed(3));
}

/** Takes all marks of a step away. */
export function clearMarks(session: Session, id: string, step: keyof typeof MARK_NAMES): void {
  const underlay = underlayOf(session, id);
  if (!underlay) return;
  const names: readonly string[] = MARK_NAMES[step];
  const points = Object.fromEntries(Object.entries(underlay.told.points).filter(([name]) => !names.includes(name)));
  changeUnderlay(session, id, { placing: null });
  tell(session, id, { points });
}

/** Opens a step, or puts it away. */
export function openStep(session: Session, id: string, step: TraceStep | null): void {
  changeUnderlay(session, id, { step, placing: null, held: null });
}

/** The marks of a step are set by the next presses, one after the other. */
export function startPlacing(session: Session, id: string, step: keyof typeof MARK_NAMES): void {
  changeUnderlay(session, id, { step, placing: MARK_NAMES[step][0], held: null });
}

/** The mark that is set after this one, in the same step; null after the last. */
export function markAfter(name: MarkName): MarkName | null {
  const names = Object.values(MARK_NAMES).find((all) => (all as readonly MarkName[]).includes(name));
  const all: readonly MarkName[] = names ?? [];
  return all[all.indexOf(name) + 1] ?? null;
}

/** Shows the picture more or less strongly; a kept picture keeps it with its next change. */
export function fadePicture(session: Session, id: string, opacity: number): void {
  changeUnderlay(session, id, { opacity: Math.min(1, Math.max(0, opacity)) });
}

/**
 * Keeps the picture in the file as it lies, as one step of undo.
 *
 * @returns whether it is kept; `trouble` says why not.
 */
export function keepPicture(session: Session, id: string): boolean {
  const { documents, doors } = session;
  const underlay = underlayOf(session, id);
  const file = documents.getState().document?.file;
  if (!underlay || !file) return false;
  const { data } = underlay.image;
  if (data === null || data.length + keptElsewhere(file, id) > MOST_KEPT) {
    const what =
      data === null ? 'is too large to be kept in the file' : 'does not fit into the file beside its other pictures';
    underlaysOf(session).setState({ trouble: { id, what, cure: 'Crop it, or save it smaller, and open that.' } });
    return false;
  }
  const kept = { image: data, marks: marksOf(underlay.told), opacity: underlay.opacity };
  const picture = doors.writePicture(kept, file.units, pictureIn(file, id));
  changeUnderlay(session, id, { kept: picture });
  const faults = commitFamily(documents, doors, withPicture(file, id, picture));
  if (!faults) return true;
  changeUnderlay(session, id, { kept: null });
  underlaysOf(session).setState({ trouble: { id, what: faults[0].what, cure: faults[0].cure } });
  return false;
}

/** Takes the picture out of the file again, as one step of undo; it still lies under the profile. */
export function stopKeeping(session: Session, id: string): void {
  const { documents, doors } = session;
  const file = documents.getState().document?.file;
  changeUnderlay(session, id, { kept: null });
  if (file && pictureIn(file, id)) commitFamily(documents, doors, withPicture(file, id, undefined));
}

/** Takes the picture away, out of the file too. */
export function removePicture(session: Session, id: string): void {
  stopKeeping(session, id);
  underlayOf(session, id)?.image.bitmap.close();
  underlaysOf(session).setState(({ underlays }) => {
    const { [id]: _gone, ...others } = underlays;
    return { underlays: others, trouble: null };
  });
}

/** The file with another picture, or none, for one profile. */
export function withPicture(file: FamilyFile, id: string, picture: PictureFile | undefined): FamilyFile {
  return withProfile(file, id, ({ picture: _before, ...rest }) => (picture ? { ...rest, picture } : rest));
}

/** The picture that a file keeps for a profile. */
export function pictureIn(file: FamilyFile, id: string): PictureFile | undefined {
  return file.profiles.find((profile) => profile.id === id)?.picture;
}

function keptElsewhere(file: FamilyFile, id: string): number {
  return file.profiles.reduce((sum, p) => sum + (p.id === id ? 0 : (p.picture?.image.length ?? 0)), 0);
}

/**
 * Makes the picture lie as the file has it now, after an undo for example.
 *
 * @returns false where the file keeps another picture, which must be decoded first.
 */
export function followFile(session: Session, id: string): boolean {
  const { document, editedFrom } = session.documents.getState();
  const underlay = underlayOf(session, id);
  if (!document || !underlay || editedFrom) return true;
  const kept = pictureIn(document.file, id) ?? null;
  if (kept === underlay.kept) return true;
  if (kept && kept.image !== underlay.image.data) return false;
  if (kept) followKept(session, id, kept);
  else changeUnderlay(session, id, { kept: null });
  return true;
}

function followKept(session: Session, id: string, kept: PictureFile): void {
  const underlay = underlayOf(session, id);
  const units = session.documents.getState().document?.file.units;
  if (!underlay || !units) return;
  const { marks, opacity } = session.doors.readPicture(kept, units);
  const told = toldOf(marks, underlay.told);
  const made = makePictureFrame(underlay.image.size, marksOf(told));
  const frame = made.ok ? made.frame : underlay.frame;
  const opened = underlay.opened + 1;
  changeUnderlay(session, id, { kept, told, opacity, frame, opened, fault: made.ok ? null : made.fault });
}
