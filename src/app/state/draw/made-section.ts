import { firstFree } from '../../../family/first-free.ts';
import { blankFromOpening, type GapResult, openingFromBlank } from '../../../profile/opening-from-blank.ts';
import type { Profile } from '../../../profile/profile.ts';
import { readGrooves } from '../../../profile/read-grooves.ts';
import { commitFamily } from '../edit-document.ts';
import { pickProfile } from '../selection-state.ts';
import type { Session } from '../session.ts';
import { millFor, millOf } from './mill-state.ts';

/** What a section with a clearance all round would be: the keyway of a blank or tool, the blank of a keyway. */
export function counterpartOf(profile: Profile, clearance: number): GapResult {
  return profile.kind === 'opening' ? blankFromOpening(profile, clearance) : openingFromBlank(profile, clearance);
}

/**
 * Adds the keyway of a blank, or the blank of a keyway, after it in the chart, as one step of undo, and picks it.
 *
 * @param clearance nanometres.
 * @returns null where it was added, else why not, in words.
 * @check tests/unit/app/mill-editing.test.ts
 */
export function makeCounterpart(session: Session, profile: Profile, clearance: number): string | null {
  const { documents, doors, selection } = session;
  const result = counterpartOf(profile, clearance);
  const { document } = documents.getState();
  if (!result.ok) return `${sentence(result.what)} ${result.cure}`;
  if (!document) return null;
  const { kind, name, section, milled, drawn, ring, told } = result.made;
  const head = { kind, name: freshName(document.family.profiles, name), ...(section ? { section } : {}) };
  const shape = milled ? { milled } : { drawn: drawn ?? ring };
  const added = doors.addSection(document.file, { ...head, afterId: profile.id }, shape);
  const faults = commitFamily(documents, doors, added.file);
  if (faults) return `${sentence(faults[0].what)} ${faults[0].cure}`;
  pickProfile(selection, { id: added.id, kind });
  millOf(session).setState((s) => ({ ...millFor(s, added.id), told: told.join(' ') }));
  return null;
}

/** A name that no profile has: with a number behind it where it is taken. */
export function freshName(profiles: readonly Profile[], wanted: string): string {
  const taken = profiles.map(({ name }) => name);
  return firstFree(taken, (n) => (n === 1 ? wanted : `${wanted} (${n})`));
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** Reads a drawn outline as grooves, to be looked at before it is used. */
export function readAsGrooves(session: Session, profile: Profile, tolerance: number): void {
  const reading = readGrooves(profile.ring, tolerance);
  millOf(session).setState((s) => ({
    ...millFor(s, profile.id),
    preview: { id: profile.id, ring: profile.ring, tolerance, reading },
    told: '',
    letGo: '',
  }));
}

/** Puts the preview away: the outline stays as drawn. Returns whether there was one. */
export function leaveAsDrawn(session: Session): boolean {
  const had = millOf(session).getState().preview !== null;
  if (had) millOf(session).setState({ preview: null });
  return had;
}

/** Makes a drawn profile a milled one by the grooves that were read, as one step of undo. */
export function takeGrooves(session: Session, profile: Profile): void {
  const { documents, doors } = session;
  const { preview } = millOf(session).getState();
  const { document } = documents.getState();
  if (!document || !preview?.reading.ok || preview.id !== profile.id) return;
  const { milled } = preview.reading;
  const faults = commitFamily(documents, doors, doors.mill.putMilled(document.file, profile.id, milled, []));
  const told = faults ? `Not taken: ${faults[0].what}. ${faults[0].cure}` : '';
  millOf(session).setState((s) => ({ ...millFor(s, profile.id), preview: null, chosen: null, told }));
}
