import { boxOf, type Point } from '../../../geom/point.ts';
import { JobCancelled } from '../../../jobs/job.ts';
import { lightOfGrey } from '../../../trace/gray-picture.ts';
import { likeliestLoop, loopRound } from '../../../trace/pick-loop.ts';
import type { PictureTrace, TracedLoop, TraceSettings } from '../../../trace/trace-picture.ts';
import type { JobOnItsWay } from '../doors.ts';
import { endEdit, previewFamily, previewOutline } from '../edit-document.ts';
import { pickProfile } from '../selection-state.ts';
import type { Session } from '../session.ts';
import { pictureIn, tell, withPicture } from './underlay-editing.ts';
import {
  changeUnderlay,
  marksOf,
  NOT_TRACED,
  type TraceHand,
  type Tracing,
  type Underlay,
  underlayOf,
  underlaysOf,
} from './underlay-state.ts';

/** The job on its way in a window, and the profile to be traced anew once it is back. */
interface Runner {
  job: JobOnItsWay<PictureTrace> | null;
  next: string | null;
}

const runners = new WeakMap<Session, Runner>();

function runnerOf(session: Session): Runner {
  const known = runners.get(session) ?? { job: null, next: null };
  runners.set(session, known);
  return known;
}

/** The tolerance in force: what was set by hand, or a fifth of a pixel between 0.002 and 0.02 mm. */
export function toleranceOf({ hand, frame }: Underlay): number {
  return hand.tolerance ?? Math.round(Math.min(20_000, Math.max(2_000, 0.2 * frame.nmPerPixel)) / 1000) * 1000;
}

/** Finds the outlines of a picture in another thread; while one search is on its way the latest wish waits for it. */
export function traceNow(session: Session, id: string): void {
  const runner = runnerOf(session);
  const underlay = underlayOf(session, id);
  if (!underlay) return;
  if (runner.job) {
    runner.next = id;
    return;
  }
  noteTracing(session, id, { running: true, trouble: null });
  const input = { picture: underlay.image.light, toProfile: underlay.frame.toProfile, settings: settingsOf(underlay) };
  try {
    runner.job = session.doors.tracePicture(input, () => {});
  } catch (reason) {
    noteTracing(session, id, { running: false, trouble: String(reason) });
    return;
  }
  runner.job.result.then(
    (found) => landed(session, id, found),
    (reason) => {
      // What was put away meanwhile needs no word.
      const away = underlayOf(session, id)?.step !== 'outline';
      const stopped = away ? null : 'It was stopped.';
      const trouble = reason instanceof JobCancelled ? stopped : String(reason?.message ?? reason);
      noteTracing(session, id, { running: false, trouble });
      goOn(session);
    },
  );
}

/** Stops the search on its way. */
export function stopTracing(session: Session): void {
  const runner = runnerOf(session);
  runner.next = null;
  runner.job?.cancel();
}

/** Puts the found outlines away. */
export function dropTrace(session: Session, id: string): void {
  stopTracing(session);
  changeUnderlay(session, id, { tracing: NOT_TRACED });
}

function landed(session: Session, id: string, found: PictureTrace): void {
  const underlay = underlayOf(session, id);
  if (underlay) {
    const { pickedAt } = underlay.tracing;
    const byHand = pickedAt ? loopRound(found.loops, pickedAt) : -1;
    const picked = byHand >= 0 ? byHand : likeliestLoop(found.loops);
    const trouble = found.loops.length > 0 ? null : whyNothing(found);
    noteTracing(session, id, { running: false, found, picked, trouble });
  }
  goOn(session);
}

function whyNothing({ faults }: PictureTrace): string {
  return faults.length > 0
    ? `An outline was found, but ${faults[0].what}. ${faults[0].cure}`
    : 'No outline at this threshold.';
}

function goOn(session: Session): void {
  const runner = runnerOf(session);
  const { next } = runner;
  runner.job = null;
  runner.next = null;
  if (next) traceNow(session, next);
}

function noteTracing(session: Session, id: string, change: Partial<Tracing>): void {
  const underlay = underlayOf(session, id);
  if (underlay) changeUnderlay(session, id, { tracing: { ...underlay.tracing, ...change } });
}

function settingsOf(underlay: Underlay): TraceSettings {
  const { grey, shade, blur, leastArea, sharpen } = underlay.hand;
  return { threshold: lightOfGrey(grey), shade, blur, leastArea, sharpen, tolerance: toleranceOf(underlay) };
}

/** Sets how the outline is found, and finds it anew. */
export function setHand(session: Session, id: string, change: Partial<TraceHand>): void {
  const underlay = underlayOf(session, id);
  if (!underlay) return;
  changeUnderlay(session, id, { hand: { ...underlay.hand, ...change } });
  traceNow(session, id);
}

/** Picks the found outline round a place; false where none is there. */
export function pickLoopAt(session: Session, id: string, place: Point): boolean {
  const found = underlayOf(session, id)?.tracing.found;
  const picked = found ? loopRound(found.loops, place) : -1;
  if (picked < 0) return false;
  noteTracing(session, id, { picked, pickedAt: place });
  return true;
}

/** Picks a found outline by its number. */
export function pickLoop(session: Session, id: string, picked: number): void {
  noteTracing(session, id, { picked, pickedAt: null });
}

/** The picked outline; null where there is none. */
export function pickedLoop({ tracing }: Underlay): TracedLoop | null {
  return tracing.found?.loops[tracing.picked] ?? null;
}

/**
 * Gives the profile the picked outline, its lower left where the old one's was; the picture moves along, so that it
 * stays under its outline. One step of undo.
 *
 * @returns whether it was taken.
 * @check tests/unit/app/underlay.test.ts
 */
export function outlineOfPicture(session: Session, id: string): boolean {
  const { documents, doors } = session;
  const underlay = underlayOf(session, id);
  const loop = underlay && pickedLoop(underlay);
  const profile = documents.getState().document?.family.profiles.find((p) => p.id === id);
  if (!underlay || !loop || !profile) return false;
  endEdit(documents);
  const box = boxOf(profile.ring);
  const vertices = loop.vertices.map((v) => ({ ...v, x: v.x + box.minX, y: v.y + box.minY }));
  if (!previewOutline(documents, doors, id, vertices)) return false;
  movePicture(session, id, { x: box.minX - loop.at.x, y: box.minY - loop.at.y });
  endEdit(documents);
  changeUnderlay(session, id, { step: null, tracing: NOT_TRACED });
  return true;
}

/** Moves the picture; where it is kept, within the edit that is under way. */
function movePicture(session: Session, id: string, by: Point): void {
  const { documents, doors } = session;
  const underlay = underlayOf(session, id);
  const file = documents.getState().document?.file;
  if (!underlay || !file) return;
  const { kept, told } = underlay;
  const middle = { x: told.middle.x + by.x, y: told.middle.y + by.y };
  // The file is written here, within the step, and not by the telling.
  changeUnderlay(session, id, { kept: null });
  tell(session, id, { middle });
  if (!kept) return;
  const marks = { ...marksOf(told), middle };
  const picture = doors.writePicture(
    { image: kept.image, marks, opacity: underlay.opacity },
    file.units,
    pictureIn(file, id),
  );
  previewFamily(documents, doors, withPicture(file, id, picture));
  changeUnderlay(session, id, { kept: picture });
}

/**
 * Makes the picked outline a profile of its own, its lower left at the origin, of the same kind and section as the one
 * that the picture lies under, and takes the picture along. One step of undo.
 *
 * @returns the new profile's id, or null where nothing is picked.
 */
export function newProfileOfPicture(session: Session, id: string, name: string): string | null {
  const { documents, doors, selection } = session;
  const underlay = underlayOf(session, id);
  const loop = underlay && pickedLoop(underlay);
  const { document } = documents.getState();
  const profile = document?.family.profiles.find((p) => p.id === id);
  if (!underlay || !loop || !document || !profile) return null;
  endEdit(documents);
  const added = doors.addSection(document.file, { kind: profile.kind, name, afterId: id }, { drawn: loop.vertices });
  if (previewFamily(documents, doors, added.file)) return null;
  endEdit(documents);
  handOver(session, id, added.id);
  changeUnderlay(session, added.id, { kept: null, step: null, tracing: NOT_TRACED });
  movePicture(session, added.id, { x: -loop.at.x, y: -loop.at.y });
  pickProfile(selection, { id: added.id, kind: profile.kind });
  return added.id;
}

/** The picture lies under another profile from now on; a kept one stays kept where it was, and is read again there. */
function handOver(session: Session, from: string, to: string): void {
  underlaysOf(session).setState(({ underlays }) => {
    const { [from]: picture, ...others } = underlays;
    return { underlays: { ...others, [to]: picture } };
  });
}
