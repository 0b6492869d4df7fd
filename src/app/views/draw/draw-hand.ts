import type { Point } from '../../../geom/point.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import {
  beginOutlineEdit,
  chooseVertices,
  chosenNow,
  finishOutline,
  moveOutline,
  verticesInHand,
} from '../../state/draw/draw-editing.ts';
import { newHeadOf } from '../../state/draw/draw-state.ts';
import { bowPenEdge, closePen, setPenVertex } from '../../state/draw/pen-editing.ts';
import type { Session } from '../../state/session.ts';
import { dragBulgeTo } from '../../tools/draw/dragging-bulge.ts';
import { dragEdgeTo, endsOf } from '../../tools/draw/dragging-edge.ts';
import { dragVerticesTo } from '../../tools/draw/dragging-vertices.ts';
import {
  type DraggingBulge,
  type DraggingEdge,
  type DraggingVertices,
  type Gesture,
  goOn,
  IDLE,
  type Press,
  type PressingPen,
} from '../../tools/draw/gesture.ts';
import type { Ghost } from '../../tools/draw/ghosts.ts';
import { beginGesture } from '../../tools/draw/idle.ts';
import { closesPen, penBow } from '../../tools/draw/pen.ts';
import { pickedBy, pickTo } from '../../tools/draw/picking-box.ts';
import { edgeLines, edgeText, penLines, placeText, vertexLines } from '../../tools/draw/read-out.ts';
import { type Snapped, snapPoint } from '../../tools/draw/snap-point.ts';
import { dragTargets, gridStep, penTargets, type Sheet } from '../../tools/draw/snap-targets.ts';
import { type UnderPointer, underPointer } from '../../tools/draw/under-pointer.ts';
import { type DrawingView, type PixelPoint, toDrawing } from '../../tools/drawing-view.ts';

/** What the hand works on. */
export interface HandSheet {
  readonly view: DrawingView;
  readonly ghosts: readonly Ghost[];
}

/** The keys that were down with a movement. */
export interface HandKeys {
  readonly shift: boolean;
  /** Ctrl, Cmd or Alt: nothing draws the hand. */
  readonly free: boolean;
}

/** What is shown of the hand. */
export interface HandShown {
  readonly gesture: Gesture;
  readonly under: UnderPointer;
  readonly snapped: Snapped | null;
  readonly readOut: { readonly at: Point; readonly lines: readonly string[] } | null;
  /** Where the pen's next vertex would be, and whether a press there closes the outline. */
  readonly next: Point | null;
  readonly closing: boolean;
}

const NOTHING: UnderPointer = { kind: 'nothing' };

export const EMPTY_HAND: HandShown = {
  gesture: IDLE,
  under: NOTHING,
  snapped: null,
  readOut: null,
  next: null,
  closing: false,
};

/** What a press of the pointer begins. */
export function pressHand(session: Session, sheet: HandSheet, press: Press, keys: HandKeys): Gesture {
  const { tool, form, refused, edit } = session.draw.getState();
  const main = press.button === 0 && !press.spaceHeld;
  if (tool === 'pen' && main) return pressPen(session, sheet, press.at, keys);
  // What an operation only shows is looked at: it has no vertices to take hold of.
  if (main && (form === 'mill' || edit?.kind === 'preview'))
    return { kind: 'panning', from: press.at, view: sheet.view };
  const vertices = verticesInHand(session);
  const chosen = chosenNow(session);
  const under = tool === 'pen' ? NOTHING : underPointer(vertices, chosen, sheet.view, press.at);
  const begun = beginGesture(press, under, vertices, chosen, sheet.view);
  if (begun.chosen) chooseVertices(session, begun.chosen);
  else if (refused && main) session.draw.setState({ refused: null });
  return begun.gesture;
}

/** What a movement of the pointer does, and what is shown then; null where the sheet itself is moved. */
export function moveHand(
  session: Session,
  sheet: HandSheet,
  gesture: Exclude<Gesture, { kind: 'panning' }>,
  at: PixelPoint,
  keys: HandKeys,
): HandShown {
  if (gesture.kind === 'idle') return hover(session, sheet, at, keys);
  if (gesture.kind === 'pressing-pen') return dragPen(session, sheet, goOn(gesture, at), at, keys);
  if (gesture.kind === 'picking-box') {
    const box = pickTo(gesture, at, sheet.view);
    const picked = pickedBy(box, verticesInHand(session));
    if (picked.join() !== chosenNow(session).join()) chooseVertices(session, picked);
    return { ...EMPTY_HAND, gesture: box };
  }
  const next = goOn(gesture, at);
  if (!next.moved) return { ...EMPTY_HAND, gesture: next };
  const edit = gesture.moved ? session.draw.getState().edit : beginOutlineEdit(session);
  if (!edit) return EMPTY_HAND;
  if (next.kind === 'dragging-bulge') return bow(session, sheet, next, at, keys, edit.base);
  return drag(session, sheet, next, at, keys, edit.base, edit.chosen);
}

function drag(
  session: Session,
  sheet: HandSheet,
  gesture: DraggingVertices | DraggingEdge,
  at: PixelPoint,
  keys: HandKeys,
  base: readonly Vertex[],
  chosen: readonly number[],
): HandShown {
  const onEdge = gesture.kind === 'dragging-edge';
  const moving = onEdge ? endsOf(gesture, base.length) : chosen;
  const targets = dragTargets(snapSheet(session, sheet, base, keys), gesture.lead, moving);
  const { wanted, snapped } = onEdge
    ? dragEdgeTo(gesture, at, sheet.view, base, targets, keys.shift)
    : dragVerticesTo(gesture, at, sheet.view, base, moving, targets, keys.shift);
  moveOutline(session, wanted, chosen);
  const { units } = session.settings.getState();
  const from = base[onEdge ? gesture.edge : gesture.lead];
  const lines = onEdge ? edgeLines(wanted, gesture.edge, from, units) : vertexLines(wanted, gesture.lead, from, units);
  return {
    ...EMPTY_HAND,
    gesture,
    snapped,
    readOut: { at: wanted[gesture.lead], lines: withWord(lines, snapped.word) },
  };
}

function bow(
  session: Session,
  sheet: HandSheet,
  gesture: DraggingBulge,
  at: PixelPoint,
  keys: HandKeys,
  base: readonly Vertex[],
): HandShown {
  const { snap } = session.draw.getState();
  const { units } = session.settings.getState();
  const step = keys.free ? null : gridStep(snap, units);
  const { wanted, bowed } = dragBulgeTo(gesture, at, sheet.view, base, step);
  moveOutline(session, wanted, session.draw.getState().edit?.chosen ?? []);
  const lines = withWord(edgeLines(wanted, gesture.edge, null, units), bowed.word);
  const under = { kind: 'bulge', edge: gesture.edge } as const;
  return { ...EMPTY_HAND, gesture, under, readOut: { at: toDrawing(sheet.view, at), lines } };
}

function withWord(lines: readonly string[], word: string): readonly string[] {
  return word ? [...lines, `→ ${word}`] : lines;
}

function hover(session: Session, sheet: HandSheet, at: PixelPoint, keys: HandKeys): HandShown {
  const { tool, form, pen, edit } = session.draw.getState();
  if (tool === 'pen') return hoverPen(session, sheet, at, keys, pen ?? []);
  if (form === 'mill' || edit?.kind === 'preview') return EMPTY_HAND;
  return { ...EMPTY_HAND, under: underPointer(verticesInHand(session), chosenNow(session), sheet.view, at) };
}

function hoverPen(
  session: Session,
  sheet: HandSheet,
  at: PixelPoint,
  keys: HandKeys,
  pen: readonly Vertex[],
): HandShown {
  const { units } = session.settings.getState();
  const last = pen.at(-1) ?? null;
  if (closesPen(pen, sheet.view, at)) {
    const lines = [...penLines(last, pen[0], units), '→ closes the outline'];
    return { ...EMPTY_HAND, next: pen[0], closing: true, readOut: { at: pen[0], lines } };
  }
  const snapped = penPlace(session, sheet, at, keys);
  const lines = withWord(penLines(last, snapped.point, units), snapped.word);
  return { ...EMPTY_HAND, next: snapped.point, snapped, readOut: { at: snapped.point, lines } };
}

function penPlace(session: Session, sheet: HandSheet, at: PixelPoint, keys: HandKeys): Snapped {
  const pen = session.draw.getState().pen ?? [];
  // A new section takes no outline's place: the one that happens to be picked draws nothing.
  const old = newHeadOf(session.draw.getState()) ? [] : verticesInHand(session);
  const targets = penTargets(snapSheet(session, sheet, old, keys), pen);
  return snapPoint(toDrawing(sheet.view, at), targets, sheet.view.scale, keys.shift ? (pen.at(-1) ?? null) : null);
}

function pressPen(session: Session, sheet: HandSheet, at: PixelPoint, keys: HandKeys): PressingPen {
  const pen = session.draw.getState().pen ?? [];
  const closing = closesPen(pen, sheet.view, at);
  if (!closing) setPenVertex(session, penPlace(session, sheet, at, keys).point);
  return { kind: 'pressing-pen', from: at, moved: false, closing };
}

function dragPen(session: Session, sheet: HandSheet, gesture: PressingPen, at: PixelPoint, keys: HandKeys): HandShown {
  const { pen, snap } = session.draw.getState();
  const { units } = session.settings.getState();
  if (!pen || !gesture.moved) return { ...EMPTY_HAND, gesture };
  const step = keys.free ? null : gridStep(snap, units);
  const bowed = penBow(pen, gesture.closing, sheet.view, at, step);
  if (!bowed) return { ...EMPTY_HAND, gesture };
  bowPenEdge(session, bowed.bulge, gesture.closing);
  const now = session.draw.getState().pen ?? pen;
  const [from, to] = gesture.closing ? [now[now.length - 1], now[0]] : [now[now.length - 2], now[now.length - 1]];
  return { ...EMPTY_HAND, gesture, readOut: { at: to, lines: withWord([edgeText(from, to, units)], bowed.word) } };
}

/** Lets go; what is then told in words, empty where there is nothing to tell. */
export function releaseHand(session: Session, gesture: Gesture, shown: HandShown): string {
  if (gesture.kind === 'pressing-pen') return releasePen(session, gesture);
  if (gesture.kind === 'dragging-vertices' && !gesture.moved) {
    if (gesture.click) chooseVertices(session, gesture.click);
    return '';
  }
  if (gesture.kind === 'picking-box') return gesture.moved ? countText(chosenNow(session).length) : '';
  if (gesture.kind === 'idle' || gesture.kind === 'panning' || !gesture.moved) return '';
  finishOutline(session);
  return session.draw.getState().refused ? '' : (shown.readOut?.lines.join('; ') ?? '');
}

function releasePen(session: Session, { closing }: PressingPen): string {
  if (closing) return closePen(session) ? 'The outline is closed.' : '';
  return penText(session);
}

/** The pen's last vertex in words. */
export function penText({ draw, settings }: Session): string {
  const pen = draw.getState().pen ?? [];
  const last = pen.at(-1);
  return last ? `Vertex ${pen.length} set at ${placeText(last, settings.getState().units)}.` : 'Nothing is set.';
}

function countText(count: number): string {
  return count === 1 ? '1 vertex chosen.' : `${count} vertices chosen.`;
}

function snapSheet(session: Session, { ghosts }: HandSheet, vertices: readonly Vertex[], { free }: HandKeys): Sheet {
  const { snap } = session.draw.getState();
  return { vertices, ghosts, snap, units: session.settings.getState().units, off: free };
}
