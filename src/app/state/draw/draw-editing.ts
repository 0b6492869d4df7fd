import type { OutlineFault } from '../../../geom/check-outline.ts';
import { findCrossings } from '../../../geom/find-crossings.ts';
import type { Point } from '../../../geom/point.ts';
import { makeDrawn, type Vertex } from '../../../geom/vertex.ts';
import { setBulge as bend } from '../../../profile/bend-edge.ts';
import { moveVertices, putVertex as vertexPut, deleteVertices as without } from '../../../profile/edit-vertices.ts';
import { insertAt } from '../../../profile/insert-vertex.ts';
import type { Profile } from '../../../profile/profile.ts';
import { dropEdit, endEdit, previewOutline } from '../edit-document.ts';
import { editedProfile } from '../selection-state.ts';
import type { Session } from '../session.ts';
import { chosenIn, editedVertices, type OutlineEdit } from './draw-state.ts';
import { refusalText } from './outline-words.ts';

/** Key presses that follow each other within this many milliseconds are one step of undo. */
const BURST_MS = 1_000;

/** The profile that is edited now. */
export function profileInHand({ documents, selection }: Session): Profile | null {
  const family = documents.getState().document?.family;
  return family ? editedProfile(family, selection.getState()) : null;
}

/** The vertices that are edited now; none where nothing is. */
export function verticesInHand(session: Session): readonly Vertex[] {
  const profile = profileInHand(session);
  return profile ? editedVertices(profile) : [];
}

/** Numbers of the vertices that are chosen now. */
export function chosenNow(session: Session): readonly number[] {
  return chosenIn(session.draw.getState(), verticesInHand(session).length);
}

/** Chooses vertices by their numbers, in place of those that were. A burst of key presses ends with it. */
export function chooseVertices(session: Session, numbers: Iterable<number>): void {
  endNudges(session);
  session.draw.setState({ chosen: [...new Set(numbers)].sort((a, b) => a - b), refused: null });
}

/** Adds a vertex to the chosen ones, or takes it out of them. */
export function toggleVertex(session: Session, number: number): void {
  const chosen = chosenNow(session);
  chooseVertices(session, chosen.includes(number) ? chosen.filter((i) => i !== number) : [...chosen, number]);
}

/** Chooses all vertices. */
export function chooseAll(session: Session): void {
  chooseVertices(session, verticesInHand(session).keys());
}

/** Chooses the one vertex that is `steps` further round than the one chosen last, or the first where none is. */
export function walkVertices(session: Session, steps: number): void {
  const count = verticesInHand(session).length;
  if (count === 0) return;
  const chosen = chosenNow(session);
  const from = steps > 0 ? chosen.at(-1) : chosen[0];
  if (from === undefined) chooseVertices(session, [steps > 0 ? 0 : count - 1]);
  else chooseVertices(session, [(((from + steps) % count) + count) % count]);
}

/**
 * Begins an edit of the outline in hand. A burst of key presses is ended first, an edit of another hand given up.
 *
 * @returns the edit, or null where there is nothing to edit.
 */
export function beginOutlineEdit(session: Session, kind: OutlineEdit['kind'] = 'hand'): OutlineEdit | null {
  endNudges(session);
  giveUpOutline(session);
  const { document } = session.documents.getState();
  const profile = profileInHand(session);
  if (!document || !profile) return null;
  const base = editedVertices(profile);
  const edit: OutlineEdit = {
    id: profile.id,
    kind,
    base,
    chosen: chosenIn(session.draw.getState(), base.length),
    document,
  };
  session.draw.setState({ edit, refused: null });
  return edit;
}

/**
 * Gives the outline another shape during an edit. One that is not sound is shown where it fails and not taken: the
 * last sound one stays.
 *
 * @param wanted vertices made of the edit's base, nanometres.
 * @param chosen numbers in `wanted` that are chosen then.
 * @returns whether it was taken.
 */
export function moveOutline(session: Session, wanted: readonly Vertex[], chosen: readonly number[]): boolean {
  const { draw, documents, doors } = session;
  const edit = standingEdit(session);
  if (!edit) return false;
  if (!previewOutline(documents, doors, edit.id, wanted)) {
    refuseOutline(session, wanted, documents.getState().editFault);
    return false;
  }
  const { document } = documents.getState();
  const profile = profileInHand(session);
  if (!document || !profile) return false;
  const numbers = numbersOf(editedVertices(profile), wanted, chosen);
  draw.setState({ refused: null, chosen: numbers, edit: { ...edit, document } });
  return true;
}

/** Shows an outline that is not sound where it fails. */
export function refuseOutline(session: Session, vertices: readonly Vertex[], fault: OutlineFault | null): void {
  const found = findCrossings(vertices);
  const at = found.length === 0 && fault?.at ? [fault.at] : found;
  session.draw.setState({ refused: { vertices, at, words: refusalText(fault) } });
}

/** Ends the edit: what was taken becomes one step of undo. A refusal stays told until the next action. */
export function finishOutline(session: Session): void {
  if (standingEdit(session)) endEdit(session.documents);
  session.draw.setState({ edit: null });
}

/** Gives the edit up: the outline is as it was. Returns whether one was under way. */
export function giveUpOutline(session: Session): boolean {
  const edit = standingEdit(session);
  if (!edit) return false;
  dropEdit(session.documents);
  session.draw.setState({ edit: null, refused: null, chosen: edit.chosen });
  return true;
}

/**
 * One whole edit of the outline in hand, a step of undo of its own.
 *
 * @param chosen numbers in `wanted` that are chosen afterwards; those that are now where absent.
 * @returns whether it was taken; `refused` says why not.
 */
export function putOutline(session: Session, wanted: readonly Vertex[], chosen?: readonly number[]): boolean {
  const edit = beginOutlineEdit(session);
  if (!edit) return false;
  const taken = moveOutline(session, wanted, chosen ?? edit.chosen.filter((i) => i < wanted.length));
  finishOutline(session);
  return taken;
}

/** Puts one vertex where it is typed to be; its arc stays. */
export function putVertex(session: Session, number: number, { x, y }: Point): boolean {
  const vertices = verticesInHand(session);
  if (number >= vertices.length) return false;
  return putOutline(session, vertexPut(vertices, number, { x: Math.round(x), y: Math.round(y) }), [number]);
}

/** Adds a vertex on an edge, half way along or at another part of it, and chooses it. */
export function insertVertex(session: Session, edge: number, part = 0.5): boolean {
  const vertices = verticesInHand(session);
  return edge < vertices.length && putOutline(session, insertAt(vertices, edge, part), [edge + 1]);
}

/** Takes vertices out of the outline; where fewer than three would be left it is refused in words. */
export function deleteVertices(session: Session, numbers: readonly number[] = chosenNow(session)): boolean {
  if (numbers.length === 0) return false;
  const change = without(verticesInHand(session), numbers);
  if (change.ok) return putOutline(session, change.vertices, []);
  session.draw.setState({ refused: { vertices: [], at: [], words: `${change.fault.what}. ${change.fault.cure}` } });
  return false;
}

/** Makes an edge an arc of so much bulge, or straight with 0. */
export function setBulge(session: Session, edge: number, bulge: number): boolean {
  const vertices = verticesInHand(session);
  return edge < vertices.length && putOutline(session, bend(vertices, edge, bulge));
}

const bursts = new WeakMap<Session, { total: Point; dropTimer: () => void }>();

/**
 * Moves the chosen vertices by one press of a key. Presses within a second of each other are one step of undo; a press
 * that would make an unsound outline is refused and does not count for the next one.
 */
export function nudgeChosen(session: Session, by: Point): boolean {
  if (chosenNow(session).length === 0) return false;
  const known = bursts.get(session);
  const standing = standingEdit(session);
  const goesOn = known && standing?.kind === 'nudges';
  const edit = goesOn ? standing : beginOutlineEdit(session, 'nudges');
  if (!edit) return false;
  const before = goesOn ? known.total : { x: 0, y: 0 };
  if (goesOn) known.dropTimer();
  const total = { x: before.x + by.x, y: before.y + by.y };
  const taken = moveOutline(session, moveVertices(edit.base, edit.chosen, total), edit.chosen);
  const dropTimer = session.doors.pace.later(BURST_MS, () => endNudges(session));
  bursts.set(session, { total: taken ? total : before, dropTimer });
  return taken;
}

/** Ends a burst of key presses, so that what follows is another step of undo. */
export function endNudges(session: Session): void {
  const burst = bursts.get(session);
  if (!burst) return;
  burst.dropTimer();
  bursts.delete(session);
  if (session.draw.getState().edit?.kind === 'nudges') finishOutline(session);
}

/** The edit under way, unless undo, another family or another pick ended it from elsewhere: then there is none. */
function standingEdit({ draw, documents }: Session): OutlineEdit | null {
  const { edit } = draw.getState();
  if (!edit) return null;
  if (documents.getState().document === edit.document) return edit;
  draw.setState({ edit: null });
  return null;
}

/** The numbers of some wanted vertices in the outline as it was taken: it may have been turned round. */
function numbersOf(taken: readonly Vertex[], wanted: readonly Vertex[], numbers: readonly number[]): number[] {
  const same = (a: Vertex | undefined, b: Vertex) => a?.x === b.x && a.y === b.y;
  if (numbers.every((i) => same(taken[i], wanted[i]))) return [...numbers];
  const places = new Map(taken.map(({ x, y }, i) => [`${x} ${y}`, i]));
  const found = numbers.flatMap((i) => places.get(`${wanted[i].x} ${wanted[i].y}`) ?? []);
  return [...new Set(found)].sort((a, b) => a - b);
}

/** Whether vertices make a sound outline: the fault, or null. */
export function faultIn(vertices: readonly Vertex[]): OutlineFault | null {
  const made = makeDrawn(vertices);
  return made.ok ? null : made.fault;
}
