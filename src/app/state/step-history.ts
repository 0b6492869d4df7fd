import type { FamilyDocument } from '../../interchange/json/read.ts';
import type { ProfileFile } from '../../interchange/json/schema.ts';
import type { Profile } from '../../profile/profile.ts';
import { dropPreview } from './draw/outline-preview.ts';
import { bringBackPen } from './draw/pen-editing.ts';
import { redo, undo } from './edit-document.ts';
import { editedProfile, pickProfile, type SelectionState } from './selection-state.ts';
import type { Session } from './session.ts';

/**
 * Takes back what was done last: a pen's draft that was thrown away comes back, else the last step of the family, and
 * the section that it changed is picked. What an operation only shows is dropped first.
 *
 * @check tests/unit/app/step-history.test.ts
 */
export function stepBack(session: Session): void {
  dropPreview(session);
  if (!bringBackPen(session)) stepAndPick(session, undo);
}

/** Does again what was taken back last, and picks the section that it changes. */
export function stepOn(session: Session): void {
  dropPreview(session);
  stepAndPick(session, redo);
}

function stepAndPick(session: Session, step: typeof undo): void {
  const { documents, selection } = session;
  const before = documents.getState().document;
  step(documents);
  const after = documents.getState().document;
  const picked = before && after && changedOne(before, after, selection.getState());
  if (picked) pickProfile(selection, picked);
}

/** The section that differs in two documents and is to be seen; null where the one that is seen does, or none. */
function changedOne(before: FamilyDocument, after: FamilyDocument, state: SelectionState): Profile | null {
  const known = new Map(before.file.profiles.map((entry) => [entry.id, entry]));
  const changed = after.file.profiles.filter((entry) => isOther(known.get(entry.id), entry)).map(({ id }) => id);
  // Wall and Compare show both of the picked pair, whichever was picked last.
  const inHand = editedProfile(after.family, state)?.id;
  const seen = state.view === 'draw' ? [inHand] : [state.entrantId, state.openingId];
  if (changed.length === 0 || changed.some((id) => seen.includes(id))) return null;
  return after.family.profiles.find(({ id }) => id === changed[0]) ?? null;
}

/** Documents are values and share the sections that are the same; one that was read anew is compared by what it says. */
function isOther(before: ProfileFile | undefined, after: ProfileFile): boolean {
  return before !== after && JSON.stringify(before) !== JSON.stringify(after);
}
