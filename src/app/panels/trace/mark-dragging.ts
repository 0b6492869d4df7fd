import { pickLoopAt } from '../../state/draw/tracing.ts';
import { markAfter, openStep, putMark } from '../../state/draw/underlay-editing.ts';
import {
  changeUnderlay,
  type MarkName,
  type Underlay,
  underlayOf,
  underlaysOf,
} from '../../state/draw/underlay-state.ts';
import type { Session } from '../../state/session.ts';
import { markUnder, pictureUnder, placedMarks, placeUnder } from '../../tools/draw/placing-marks.ts';
import type { DrawingView, PixelPoint } from '../../tools/drawing-view.ts';

/** The mark in hand: whose picture, and how far from it the hand took it, in canvas pixels. */
interface HeldMark {
  readonly id: string;
  readonly name: MarkName;
  readonly grip: PixelPoint;
}

const inHand = new WeakMap<Session, HeldMark>();

/**
 * A press on the sheet: takes the mark under it, sets the mark that is being set, or picks a found outline.
 *
 * @returns whether it was taken; the press is then nobody else's.
 */
export function pressMark(session: Session, id: string, view: DrawingView, at: PixelPoint): boolean {
  const underlay = underlayOf(session, id);
  if (!underlay?.step) return false;
  const { placing, frame } = underlay;
  const under = markUnder(marksOn(underlay, view), at);
  if (!placing && under)
    return take(session, id, under.name, { px: at.px - under.pixel.px, py: at.py - under.pixel.py }, under.at);
  if (placing) {
    const place = pictureUnder(frame, view, at);
    return place ? take(session, id, placing, { px: 0, py: 0 }, place) : true;
  }
  return underlay.step === 'outline' && pickLoopAt(session, id, placeUnder(view, at));
}

function take(session: Session, id: string, name: MarkName, grip: PixelPoint, at: { x: number; y: number }): true {
  inHand.set(session, { id, name, grip });
  changeUnderlay(session, id, { held: { name, at } });
  return true;
}

/** The mark in hand follows the pointer; the picture lies still until it is let go. */
export function dragMark(session: Session, view: DrawingView, at: PixelPoint): void {
  const held = inHand.get(session);
  const underlay = held && underlayOf(session, held.id);
  if (!held || !underlay) return;
  const place = pictureUnder(underlay.frame, view, { px: at.px - held.grip.px, py: at.py - held.grip.py });
  if (place) changeUnderlay(session, held.id, { held: { name: held.name, at: place } });
}

/** Lets the mark go: it is set there, and where marks are being set the next one is asked for. */
export function dropMark(session: Session): void {
  const held = inHand.get(session);
  inHand.delete(session);
  const underlay = held && underlayOf(session, held.id);
  if (!held || !underlay?.held) return;
  const { placing, held: at } = underlay;
  const next = placing === held.name ? markAfter(held.name) : placing;
  changeUnderlay(session, held.id, { held: null, placing: next });
  putMark(session, held.id, held.name, at.at);
}

/** Gives up the mark in hand, else the setting of marks; false where neither was under way. */
export function giveUpMark(session: Session): boolean {
  const held = inHand.get(session);
  inHand.delete(session);
  const id = held?.id ?? placingId(session);
  const underlay = id ? underlayOf(session, id) : null;
  if (!id || !underlay) return false;
  if (held && underlay.held) changeUnderlay(session, id, { held: null });
  else openStep(session, id, underlay.step);
  return true;
}

/** The profile on whose picture marks are being set. */
function placingId(session: Session): string | null {
  const all = Object.entries(underlaysOf(session).getState().underlays);
  return all.find(([, { placing }]) => placing !== null)?.[0] ?? null;
}

/** The pointer's look over a mark, while one is being set, or over a found outline; null elsewhere. */
export function markCursor(session: Session, id: string, view: DrawingView, at: PixelPoint): string | null {
  const underlay = underlayOf(session, id);
  if (!underlay?.step) return null;
  if (underlay.held) return 'grabbing';
  if (underlay.placing) return 'crosshair';
  return markUnder(marksOn(underlay, view), at) ? 'grab' : null;
}

function marksOn({ told, held, step, frame }: Underlay, view: DrawingView) {
  return placedMarks(told, held, step, frame, view);
}
