import type { Placement } from '../../../fit/fit.ts';
import type { Point } from '../../../geom/point.ts';
import { putVertex } from '../../../profile/edit-vertices.ts';
import type { Profile } from '../../../profile/profile.ts';
import { editedVertices } from '../../state/draw/draw-state.ts';
import { dropEdit, endEdit, previewOutline } from '../../state/edit-document.ts';
import type { Session } from '../../state/session.ts';
import { walk } from '../../state/walk.ts';
import { faultWords } from './compare-words.ts';
import { type CornerEdit, type CornerPart, cornersOf } from './corner-state.ts';

/** The pair whose corners are moved. */
export interface CornerPair {
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly placement: Placement;
}

/** The outline whose corners are shown. */
export function editedProfile(pair: CornerPair, part: CornerPart): Profile {
  return part === 'entrant' ? pair.entrant : pair.opening;
}

/** Shows the corners of the part in hand, or puts them away; an edit under way is given up. */
export function toggleCorners(session: Session): void {
  giveUpCorner(session);
  const corners = cornersOf(session);
  corners.setState(({ on }) => ({ on: !on, refusedAt: null, refusal: '' }));
}

/** Shows the corners of the other part. */
export function pickCornerPart(session: Session, part: CornerPart): void {
  giveUpCorner(session);
  cornersOf(session).setState({ part, chosen: 0, refusedAt: null, refusal: '' });
}

/** Chooses a corner by its number. */
export function chooseCorner(session: Session, chosen: number): void {
  cornersOf(session).setState({ chosen, refusedAt: null, refusal: '' });
}

/** Chooses the corner `steps` further round the outline. */
export function walkCorners(session: Session, pair: CornerPair, steps: number): void {
  const { part, chosen } = cornersOf(session).getState();
  const numbers = editedVertices(editedProfile(pair, part)).map((_, i) => i);
  chooseCorner(session, walk(numbers, chosen, steps) ?? 0);
}

/** Where the chosen corner is, in the frame of its outline. */
export function chosenCorner(session: Session, pair: CornerPair): Point {
  const { part, chosen } = cornersOf(session).getState();
  const corners = editedVertices(editedProfile(pair, part));
  return corners[Math.min(chosen, corners.length - 1)];
}

/** Begins an edit of the chosen corner, unless one is under way. The blank is held still until it ends. */
export function beginCorner(session: Session, pair: CornerPair): void {
  const corners = cornersOf(session);
  const { edit: underWay, part, chosen } = corners.getState();
  if (underWay) return;
  const profile = editedProfile(pair, part);
  const base = editedVertices(profile);
  const handBefore = session.hand.getState().placement;
  const index = Math.min(chosen, base.length - 1);
  const edit: CornerEdit = { id: profile.id, base, index, handBefore, held: pair.placement };
  corners.setState({ edit, refusedAt: null, refusal: '' });
}

/** Moves the corner of the edit under way; a place that makes no sound outline is told and not taken. */
export function moveCorner(session: Session, to: Point): void {
  const { documents, doors, hand } = session;
  const corners = cornersOf(session);
  const { edit, chosen } = corners.getState();
  if (!edit) return;
  const taken = previewOutline(documents, doors, edit.id, putVertex(edit.base, edit.index, to));
  if (taken) corners.setState({ refusedAt: null, refusal: '', chosen: numberOf(session, edit.id, to) ?? chosen });
  else corners.setState({ refusedAt: to, refusal: faultWords(documents.getState().editFault?.message ?? '') });
  hand.setState({ placement: edit.held });
}

/** The number of the corner at a place: a move may turn the outline round, and then corners are counted anew. */
function numberOf({ documents }: Session, id: string, { x, y }: Point): number | null {
  const profile = documents.getState().document?.family.profiles.find((p) => p.id === id);
  const index = profile ? editedVertices(profile).findIndex((p) => p.x === x && p.y === y) : -1;
  return index < 0 ? null : index;
}

/** Ends the edit: what was taken becomes one step of undo, and the blank is let go. */
export function finishCorner(session: Session): void {
  const corners = cornersOf(session);
  const { edit } = corners.getState();
  if (!edit) return;
  endEdit(session.documents);
  session.hand.setState({ placement: edit.handBefore });
  corners.setState({ edit: null });
}

/** Gives the edit up: the outline is as it was. Returns whether one was under way. */
export function giveUpCorner(session: Session): boolean {
  const corners = cornersOf(session);
  const { edit } = corners.getState();
  if (!edit) return false;
  dropEdit(session.documents);
  session.hand.setState({ placement: edit.handBefore });
  corners.setState({ edit: null, refusedAt: null, refusal: '' });
  return true;
}

/** One whole edit: the chosen corner goes to `to`, as one step of undo. */
export function putCorner(session: Session, pair: CornerPair, to: Point): void {
  beginCorner(session, pair);
  moveCorner(session, to);
  finishCorner(session);
}
