import type { ClaimStanding } from '../../../claims/check-claims.ts';
import type { Claim } from '../../../family/claim.ts';
import type { Session } from '../session.ts';
import { makeSheetLook, withoutWords } from '../sheet-look.ts';

/** Which claims are listed: all, those that need a look, or those of one standing. */
export type ClaimsShown = 'all' | 'failing' | ClaimStanding;

/** A claim as it is being typed. */
export interface ClaimDraft {
  readonly blank: string;
  readonly opening: string;
  readonly enters: boolean;
  readonly by: string;
  readonly note: string;
}

/** A table of claims that is to be looked at before it is taken; its text is typed or pasted where there is no name. */
export interface IncomingClaims {
  /** Name of the file; empty where it is pasted. */
  readonly name: string;
  readonly text: string;
}

/** What the sheet of claims shows. Claims are known by their value in the family, which edits of others keep. */
export interface ClaimsState {
  readonly shown: ClaimsShown;
  /** The source whose claims are listed, '' for those that name none; null: of all sources. */
  readonly source: string | null;
  readonly picked: Claim | null;
  readonly ticked: ReadonlySet<Claim>;
  /** The claim that is being changed; null where a new one is typed. */
  readonly changing: Claim | null;
  readonly draft: ClaimDraft;
  /** Whether the fields for one claim are there. */
  readonly typing: boolean;
  readonly incoming: readonly IncomingClaims[];
  /** What was done last, in words. */
  readonly said: string;
}

export const EMPTY_DRAFT: ClaimDraft = { blank: '', opening: '', enters: true, by: '', note: '' };

const NOTHING: ClaimsState = {
  shown: 'all',
  source: null,
  picked: null,
  ticked: new Set(),
  changing: null,
  draft: EMPTY_DRAFT,
  typing: false,
  incoming: [],
  said: '',
};

/** What is looked at and typed on the sheet of claims. */
export const claimsOf = makeSheetLook<ClaimsState>(NOTHING, {
  without: withoutWords,
  of: (s) => s.document?.family.claims,
});

/** Shows a table of claims on the sheet, to be looked at before it is taken. */
export function showIncoming(session: Session, name: string, text: string): void {
  const store = claimsOf(session);
  session.tiers.setState({ sheet: 'claims' });
  session.selection.setState({ view: 'tiers' });
  store.setState({ incoming: [...store.getState().incoming, { name, text }] });
}

/** Puts the table that is looked at away; the next one comes. */
export function endIncoming(session: Session): void {
  const store = claimsOf(session);
  store.setState({ incoming: store.getState().incoming.slice(1) });
}
