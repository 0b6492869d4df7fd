import type { Point } from '../../../geom/point.ts';
import { type Vertex, vertexAt } from '../../../geom/vertex.ts';
import type { DocumentState } from '../document-state.ts';
import { commitFamily } from '../edit-document.ts';
import { pickProfile } from '../selection-state.ts';
import type { Session } from '../session.ts';
import { faultIn, giveUpOutline, profileInHand, putOutline, refuseOutline } from './draw-editing.ts';
import { type DrawState, type NewHead, newHeadOf, type PenTarget } from './draw-state.ts';
import { faultText } from './outline-words.ts';

/**
 * Takes the pen in hand. An outline that was begun goes on, for the new target where one is given.
 *
 * @param target what becomes of the outline; without one that of before, else it replaces the outline in hand.
 */
export function takePen(session: Session, target?: PenTarget): void {
  giveUpOutline(session);
  const { draw } = session;
  const profile = profileInHand(session);
  const state = draw.getState();
  const before = hasBegun(state) ? state.penFor : null;
  const penFor = target ?? before ?? (profile && { id: profile.id });
  if (penFor) draw.setState({ tool: 'pen', form: 'outline', penFor, chosen: [], refused: null });
}

/** Whether the pen has begun something that it can go on with: some vertices, or a section that has only its name. */
export function hasBegun(state: Pick<DrawState, 'pen' | 'penFor'>): boolean {
  return state.pen !== null || newHeadOf(state) !== null;
}

/** Puts the pen away; what it has begun is kept. */
export function putPenAway({ draw }: Session): void {
  draw.setState({ tool: 'choose', refused: null });
}

/** Throws away what the pen has begun, and puts it away. {@link bringBackPen} takes it back. */
export function discardPen({ draw, documents }: Session): void {
  const { pen, penFor } = draw.getState();
  const discarded = hasBegun({ pen, penFor }) ? { pen, penFor, document: documents.getState().document } : null;
  draw.setState({ tool: 'choose', pen: null, penFor: null, refused: null, discarded });
}

/** What was thrown away and can be brought back: not after another edit, which undo would take back first. */
export function discardedOf(
  { discarded }: Pick<DrawState, 'discarded'>,
  { document }: Pick<DocumentState, 'document'>,
) {
  return discarded && discarded.document === document ? discarded : null;
}

/**
 * Takes up again what the pen had begun and was thrown away.
 *
 * @returns whether there was something.
 * @check tests/unit/app/draw-pen.test.ts
 */
export function bringBackPen({ draw, documents }: Session): boolean {
  const discarded = discardedOf(draw.getState(), documents.getState());
  if (!discarded) return false;
  const { pen, penFor } = discarded;
  draw.setState({ tool: 'pen', form: 'outline', pen, penFor, discarded: null, chosen: [], refused: null });
  return true;
}

/**
 * Sets the next vertex of the pen.
 *
 * @param at nanometres.
 * @returns false where it would lie on the vertex before it, which says nothing.
 */
export function setPenVertex({ draw }: Session, at: Point): boolean {
  const pen = draw.getState().pen ?? [];
  const next = vertexAt(Math.round(at.x) + 0, Math.round(at.y) + 0);
  const last = pen.at(-1);
  if (last && last.x === next.x && last.y === next.y) return false;
  draw.setState({ pen: [...pen, next], refused: null, discarded: null });
  return true;
}

/** Bows the edge that leads to the pen's last vertex, or with `closing` the edge back to the first. */
export function bowPenEdge({ draw }: Session, bulge: number, closing = false): void {
  const { pen } = draw.getState();
  const edge = (pen?.length ?? 0) - (closing ? 1 : 2);
  if (!pen || edge < 0) return;
  draw.setState({ pen: pen.with(edge, vertexAt(pen[edge].x, pen[edge].y, bulge)), refused: null });
}

/** Takes the pen's last vertex back; returns whether there was one. */
export function takeBackPenVertex({ draw }: Session): boolean {
  const { pen } = draw.getState();
  if (!pen) return false;
  const left = pen.slice(0, -1);
  const last = left.at(-1);
  draw.setState({ pen: last ? left.with(-1, vertexAt(last.x, last.y)) : null, refused: null });
  return true;
}

/**
 * Closes the pen's outline: it takes the place of a profile's outline, or becomes a profile, as one step of undo. One
 * that crosses itself is refused with words, and the pen goes on.
 *
 * @returns whether it was closed.
 * @check tests/unit/app/draw-pen.test.ts
 */
export function closePen(session: Session): boolean {
  const { draw } = session;
  const { pen, penFor } = draw.getState();
  if (!pen || !penFor) return false;
  const fault = faultIn(pen);
  if (fault) {
    refuseOutline(session, pen, fault);
    draw.setState((s) => ({ refused: s.refused && { ...s.refused, words: notClosed(fault.message) } }));
    return false;
  }
  const closed = 'id' in penFor ? replaceBy(session, penFor.id, pen) : addProfileOf(session, penFor.head, pen);
  if (closed) draw.setState({ tool: 'choose', pen: null, penFor: null, refused: null, discarded: null });
  return closed;
}

function notClosed(message: string): string {
  return `Not closed: ${faultText(message)}. Take vertices back, or move on.`;
}

function replaceBy(session: Session, id: string, pen: readonly Vertex[]): boolean {
  const profile = session.documents.getState().document?.family.profiles.find((p) => p.id === id);
  if (!profile) {
    session.draw.setState({
      refused: { vertices: [], at: [], words: 'The profile that was drawn is gone; pick one.' },
    });
    return false;
  }
  pickProfile(session.selection, profile);
  return putOutline(session, pen, []);
}

function addProfileOf(session: Session, head: NewHead, pen: readonly Vertex[]): boolean {
  const { documents, doors, draw, selection } = session;
  const { document } = documents.getState();
  if (!document) return false;
  const { file, id } = doors.addSection(document.file, head, { drawn: pen });
  const faults = commitFamily(documents, doors, file);
  if (faults) {
    draw.setState({ refused: { vertices: [], at: [], words: `${faults[0].what} ${faults[0].cure}` } });
    return false;
  }
  pickProfile(selection, { id, kind: head.kind });
  return true;
}
