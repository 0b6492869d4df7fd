import type { Profile } from '../../../profile/profile.ts';
import {
  chooseGroove,
  chosenGroove,
  finishMilled,
  giveUpMilled,
  previewMilled,
  wantedMilled,
} from '../../state/draw/mill-editing.ts';
import { type MillState, millFor, millOf } from '../../state/draw/mill-state.ts';
import type { Session } from '../../state/session.ts';
import { dragGrooveTo, holdGroove, millStep, nudgePart } from '../../tools/draw/dragging-groove.ts';
import { grooveUnderPointer, type MillHandle, millHandles } from '../../tools/draw/groove-under-pointer.ts';
import type { DrawingView, PixelPoint } from '../../tools/drawing-view.ts';

/** The handle under the pointer; null where there is none or the profile is not milled. */
function handleAt(state: MillState, profile: Profile, view: DrawingView, at: PixelPoint): MillHandle | null {
  return profile.milled ? grooveUnderPointer(profile.milled, chosenGroove(state, profile), view, at) : null;
}

/** Takes hold of the handle under the pointer and chooses its groove; false where there is none. */
export function pressGroove(session: Session, profile: Profile, view: DrawingView, at: PixelPoint): boolean {
  const mill = millOf(session);
  const handle = handleAt(mill.getState(), profile, view, at);
  if (!handle || !profile.milled) return false;
  if (handle.groove !== null) chooseGroove(session, profile, handle.groove);
  const drag = holdGroove(handle, profile.milled, view, at);
  mill.setState((s) => ({ ...millFor(s, profile.id), drag, draft: null, told: '', letGo: '' }));
  return true;
}

/** The held handle follows the pointer; what can be milled is shown and judged at once. */
export function dragGroove(session: Session, view: DrawingView, at: PixelPoint, fine: boolean): void {
  const profile = heldProfile(session);
  const { drag } = millOf(session).getState();
  if (!profile || !drag) return;
  previewMilled(session, profile, dragGrooveTo(drag, at, view, session.settings.getState().units, fine));
}

/** Lets go: what was taken is one step of undo. */
export function dropGroove(session: Session): void {
  const profile = heldProfile(session);
  if (profile) finishMilled(session, profile);
}

/** Gives the drag up: the blade is as it was. Returns whether one was under way. */
export function giveUpGroove(session: Session): boolean {
  const profile = heldProfile(session);
  if (profile) giveUpMilled(session, profile);
  return profile !== null;
}

/** The cursor over a handle; null where the pointer is over none. */
export function grooveCursor(session: Session, profile: Profile, view: DrawingView, at: PixelPoint): string | null {
  const handle = handleAt(millOf(session).getState(), profile, view, at);
  if (!handle) return null;
  return handle.along === 'x' ? 'ew-resize' : 'ns-resize';
}

/**
 * Moves the chosen groove by the arrow keys: up and down its place (a step: its edge), left and right its root.
 *
 * @returns whether the key was one of these and a groove is chosen.
 */
export function nudgeGroove(session: Session, profile: Profile, key: string, shift: boolean, alt = false): boolean {
  const state = millOf(session).getState();
  const index = chosenGroove(state, profile);
  const milled = wantedMilled(state, profile);
  const direction = { ArrowUp: 1, ArrowDown: -1, ArrowRight: 1, ArrowLeft: -1 }[key];
  if (index === null || !milled || direction === undefined) return false;
  const upright = key === 'ArrowUp' || key === 'ArrowDown';
  const parts = upright ? ['place', 'low', 'high'] : ['root'];
  const handles = millHandles(milled).filter((h) => h.groove === index);
  const handle = parts.flatMap((part) => handles.find((h) => h.part === part) ?? [])[0];
  if (!handle) return false;
  const step = millStep(session.settings.getState().units, alt);
  previewMilled(session, profile, nudgePart(milled, handle, direction * (shift ? 10 : 1), step));
  finishNudge(session, profile);
  return true;
}

/** A press is a whole step; what could not be milled stays to be read, with its fault. */
function finishNudge(session: Session, profile: Profile): void {
  const { draft } = millOf(session).getState();
  finishMilled(session, profile);
  if (draft) millOf(session).setState((s) => ({ ...millFor(s, profile.id), draft }));
}

/** The profile whose handle is held, as it is now. */
function heldProfile(session: Session): Profile | null {
  const { id, drag } = millOf(session).getState();
  if (!drag) return null;
  return session.documents.getState().document?.family.profiles.find((p) => p.id === id) ?? null;
}
