import type { Profile } from '../../../profile/profile.ts';
import { leaveAsDrawn } from '../../state/draw/made-section.ts';
import { chooseGroove, chosenGroove, dropDraft, takeOutGroove, wantedMilled } from '../../state/draw/mill-editing.ts';
import { millFor, millOf } from '../../state/draw/mill-state.ts';
import { grooveName, grooveSizes, grooveWord } from '../../state/draw/mill-words.ts';
import type { Session } from '../../state/session.ts';
import { walk } from '../../state/walk.ts';
import { nudgeGroove } from './mill-dragging.ts';

/**
 * What a key on the sheet does in the Mill form.
 *
 * @returns what is then told, empty where nothing is; null where the key does nothing here.
 */
export function grooveByKey(
  session: Session,
  profile: Profile,
  key: string,
  shift: boolean,
  alt: boolean,
): string | null {
  if (nudgeGroove(session, profile, key, shift, alt)) return sayChosen(session, profile.id);
  if (alt) return null;
  const state = millOf(session).getState();
  const chosen = chosenGroove(state, profile);
  if (key === '[' || key === ']') {
    const places = [...(wantedMilled(state, profile)?.grooves.keys() ?? [])];
    chooseGroove(session, profile, chosen === null ? (places[0] ?? null) : walk(places, chosen, key === ']' ? 1 : -1));
    return sayChosen(session, profile.id);
  }
  if ((key === 'Delete' || key === 'Backspace') && chosen !== null) {
    takeOutGroove(session, profile, chosen);
    return `The ${grooveWord(profile.kind)} was removed.`;
  }
  return null;
}

function sayChosen(session: Session, id: string): string {
  const profile = session.documents.getState().document?.family.profiles.find((p) => p.id === id);
  const state = millOf(session).getState();
  const chosen = profile ? chosenGroove(state, profile) : null;
  const milled = profile && wantedMilled(state, profile);
  if (!profile || chosen === null || !milled) return '';
  const groove = milled.grooves[chosen];
  const { units } = session.settings.getState();
  const name = grooveName(groove, milled.height, grooveWord(profile.kind));
  const sound = millFor(state, id).draft ? 'Not milled so' : '';
  return `${[sound, `${chosen + 1} ${name}`].filter(Boolean).join(': ')}, ${grooveSizes(groove, units)}`;
}

/** Escape in the Mill form: first a draft is dropped, then a preview, then the choice. Returns whether there was one. */
export function leaveMilling(session: Session): boolean {
  if (session.draw.getState().form !== 'mill') return false;
  const { id } = millOf(session).getState();
  const profile = session.documents.getState().document?.family.profiles.find((p) => p.id === id);
  if (!profile) return false;
  if (dropDraft(session, profile) || leaveAsDrawn(session)) return true;
  if (chosenGroove(millOf(session).getState(), profile) === null) return false;
  chooseGroove(session, profile, null);
  return true;
}
