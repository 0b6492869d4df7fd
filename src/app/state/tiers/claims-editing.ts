import type { Side } from '../../../claims/resolve-claims.ts';
import type { Claim } from '../../../family/claim.ts';
import { countWord } from '../../../family/count-word.ts';
import { editFamily, type Refusal } from '../edit-document.ts';
import type { Session } from '../session.ts';
import { type ClaimDraft, claimsOf, EMPTY_DRAFT } from './claims-state.ts';

/** What lacks in a claim that is being typed; empty where nothing does. */
export function draftFault({ blank, opening }: ClaimDraft): string {
  if (blank.trim() === '' && opening.trim() === '') return 'Give a blank and a keyway.';
  if (blank.trim() === '') return 'Give the blank.';
  return opening.trim() === '' ? 'Give the keyway.' : '';
}

/** Takes the claim that is typed: a new one at the end, or in place of the one that is being changed. */
export function takeDraft(session: Session): Refusal {
  const store = claimsOf(session);
  const { draft, changing } = store.getState();
  const { claims } = session.doors;
  const place = changing ? placeOf(session, changing) : -1;
  const refusal = editFamily(session, (file) =>
    place >= 0 ? claims.replaceClaim(file, place, draft) : claims.addClaims(file, [draft]),
  );
  if (refusal) return refusal;
  const after = claimsNow(session);
  const taken = place >= 0 ? after[place] : after.find((claim) => saysSame(claim, draft));
  store.setState({
    changing: null,
    draft: { ...EMPTY_DRAFT, by: draft.by, enters: draft.enters },
    picked: taken ?? null,
    said: place >= 0 ? 'The claim is changed.' : 'The claim is added.',
  });
  return null;
}

/** Begins to change a claim in the fields. */
export function changeClaim(session: Session, claim: Claim): void {
  const { blank, opening, enters, by = '', note = '' } = claim;
  claimsOf(session).setState({
    typing: true,
    changing: claim,
    picked: claim,
    draft: { blank, opening, enters, by, note },
  });
}

/** Leaves the claim as it was. */
export function endChange(session: Session): void {
  const { draft } = claimsOf(session).getState();
  claimsOf(session).setState({ changing: null, draft: { ...EMPTY_DRAFT, by: draft.by } });
}

/** Adds the claims of a table as one step; tells how many were there already. */
export function takeClaims(session: Session, taken: readonly Claim[]): Refusal {
  const before = claimsNow(session).length;
  const refusal = editFamily(session, (file) => session.doors.claims.addClaims(file, taken));
  if (refusal) return refusal;
  const added = claimsNow(session).length - before;
  const had = taken.length - added;
  const words = had > 0 ? `; ${countText(had)} ${had === 1 ? 'was' : 'were'} there already` : '';
  claimsOf(session).setState({
    shown: 'all',
    source: null,
    picked: claimsNow(session)[before] ?? null,
    said: `${capital(countText(added))} added${words}.`,
  });
  return null;
}

/** Deletes claims as one step. */
export function deleteClaims(session: Session, gone: Iterable<Claim>): Refusal {
  const wanted = new Set(gone);
  const places = claimsNow(session).flatMap((claim, i) => (wanted.has(claim) ? [i] : []));
  if (places.length === 0) return null;
  const refusal = editFamily(session, (file) => session.doors.claims.removeClaims(file, places));
  if (!refusal) forget(session, `${capital(countText(places.length))} deleted. Ctrl+Z brings them back.`);
  return refusal;
}

/** Deletes all that one source claims; '' for claims that name none. */
export function deleteSource(session: Session, source: string): Refusal {
  const before = claimsNow(session).length;
  const refusal = editFamily(session, (file) => session.doors.claims.removeClaimsBy(file, source || undefined));
  if (refusal) return refusal;
  forget(session, `${capital(countText(before - claimsNow(session).length))} deleted. Ctrl+Z brings them back.`);
  if (claimsOf(session).getState().source === source) claimsOf(session).setState({ source: null });
  return null;
}

/** Leaves out claims that are repeated word for word. */
export function dropRepeated(session: Session): Refusal {
  const before = claimsNow(session).length;
  const refusal = editFamily(session, (file) => session.doors.claims.dropRepeatedClaims(file));
  const gone = before - claimsNow(session).length;
  claimsOf(session).setState({ said: gone === 0 ? 'No claim is repeated.' : `${capital(countText(gone))} left out.` });
  return refusal;
}

/** Writes another name in all claims that use one. */
export function putName(session: Session, side: Side, from: string, to: string): Refusal {
  const { picked } = claimsOf(session).getState();
  const place = picked ? placeOf(session, picked) : -1;
  const count = claimsNow(session).filter((claim) => claim[side] === from).length;
  const refusal = editFamily(session, (file) => session.doors.claims.renameInClaims(file, side, from, to));
  if (refusal) return refusal;
  claimsOf(session).setState({
    picked: claimsNow(session)[place] ?? null,
    ticked: new Set(),
    said: `“${from}” is now “${to}” in ${countText(count)}.`,
  });
  return null;
}

/** The claims of the open family. */
export function claimsNow({ documents }: Pick<Session, 'documents'>): readonly Claim[] {
  return documents.getState().document?.family.claims ?? [];
}

/** "1 claim", "1,234 claims". */
export function countText(count: number): string {
  return countWord(count, 'claim');
}

function forget(session: Session, said: string): void {
  claimsOf(session).setState({ ticked: new Set(), picked: null, changing: null, said });
}

function placeOf(session: Session, claim: Claim): number {
  return claimsNow(session).indexOf(claim);
}

function saysSame(a: Claim, b: ClaimDraft): boolean {
  const same = a.blank === b.blank.trim() && a.opening === b.opening.trim() && a.enters === b.enters;
  return same && (a.by ?? '') === b.by.trim();
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
