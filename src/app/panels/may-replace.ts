import { isEdited } from '../state/document-state.ts';
import type { Session } from '../state/session.ts';

/** Whether another family may take the place of the open one: asks first where edits would be lost. */
export function mayReplace({ documents }: Session): boolean {
  const state = documents.getState();
  if (!isEdited(state)) return true;
  const name = state.document?.family.name ?? 'The open family';
  return window.confirm(`${name} has edits that are not saved. Open another family and lose them?`);
}
