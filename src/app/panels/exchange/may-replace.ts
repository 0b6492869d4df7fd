import { isSafe, keepOf } from '../../keep/keep-state.ts';
import { isEdited } from '../../state/document-state.ts';
import type { Session } from '../../state/session.ts';

/**
 * Whether another family may take the place of the open one: asks first where edits would be lost. Edits that this
 * browser keeps are not: they stay under Recent families.
 */
export function mayReplace(session: Session): boolean {
  const state = session.documents.getState();
  if (!isEdited(state) || isSafe(keepOf(session).getState())) return true;
  const name = state.document?.family.name ?? 'The open family';
  return window.confirm(
    `${name} has edits that are neither saved in a file nor kept in this browser. Open another family and lose them?`,
  );
}
