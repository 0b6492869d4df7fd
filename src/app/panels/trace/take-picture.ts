import { editedProfile } from '../../state/selection-state.ts';
import type { Session } from '../../state/session.ts';
import { openPicture } from './open-picture.ts';

/** Lays a picture that was dropped, pasted or picked under the profile that the Draw view edits, and shows it there. */
export function takePicture(session: Session, file: File): void {
  const family = session.documents.getState().document?.family;
  const profile = family && editedProfile(family, session.selection.getState());
  if (!profile) return;
  session.selection.setState({ view: 'draw' });
  void openPicture(session, profile.id, file);
}
