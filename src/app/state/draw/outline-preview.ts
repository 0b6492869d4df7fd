import type { Vertex } from '../../../geom/vertex.ts';
import type { DocumentState } from '../document-state.ts';
import type { Session } from '../session.ts';
import { beginOutlineEdit, finishOutline, giveUpOutline, moveOutline } from './draw-editing.ts';
import { editedVertices } from './draw-state.ts';

/** What became of an operation: a step of undo, nothing because the outline is so already, or not taken. */
export type TakenAs = 'step' | 'same' | 'refused';

/**
 * The vertices of a profile without the edit that is under way: what an operation is made of, however long its form
 * has been open.
 *
 * @returns the same array as long as the outline is the same; none where the profile is gone.
 */
export function standingOutline({ document, editedFrom }: DocumentState, id: string): readonly Vertex[] {
  const profile = (editedFrom ?? document)?.family.profiles.find((p) => p.id === id);
  return profile ? editedVertices(profile) : NONE;
}

const NONE: readonly Vertex[] = [];

/** Whether the outline on the sheet is what an operation would come to, and not taken yet. */
export function isPreviewed({ draw }: Session): boolean {
  return draw.getState().edit?.kind === 'preview';
}

/**
 * Shows what an operation comes to. It is never taken unasked: whatever else is done drops it.
 *
 * @check tests/unit/app/outline-preview.test.ts
 */
export function showPreview(session: Session, vertices: readonly Vertex[]): boolean {
  if (!isPreviewed(session)) beginOutlineEdit(session, 'preview');
  return moveOutline(session, vertices, []);
}

/** The outline is as it was before the preview; what a hand or a burst of keys does is left alone. */
export function dropPreview(session: Session): void {
  if (isPreviewed(session)) giveUpOutline(session);
}

/** Takes what an operation comes to, as one step of undo. */
export function takePreview(session: Session, vertices: readonly Vertex[]): TakenAs {
  const { documents } = session;
  if (!showPreview(session, vertices)) return 'refused';
  const before = documents.getState().past.length;
  finishOutline(session);
  return documents.getState().past.length > before ? 'step' : 'same';
}
