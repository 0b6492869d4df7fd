import type { AreaPlace } from '../../../../interchange/json/edit-areas.ts';
import type { Session } from '../../session.ts';
import { makeSheetLook, withoutWords } from '../../sheet-look.ts';

/** A name that is being typed. */
export type AccessTyping =
  | { readonly what: 'area' | 'holder'; readonly id: string }
  | { readonly what: 'new area'; readonly place: AreaPlace }
  | { readonly what: 'new holder'; readonly after?: string };

/** What of areas and holders is looked at. */
export interface AccessLook {
  /** The picked row; null is the row of the holders' names. */
  readonly areaId: string | null;
  /** The picked column; null is the column of the areas' names. */
  readonly holderId: string | null;
  /** Groups whose areas are not shown. */
  readonly folded: ReadonlySet<string>;
  readonly typing: AccessTyping | null;
  /** Whether a table is being pasted. */
  readonly pasting: boolean;
  /** What was done last, in words. */
  readonly said: string;
  /** Counts the times that the picked cell is to have the focus. */
  readonly grasp: number;
}

const NOTHING: AccessLook = {
  areaId: null,
  holderId: null,
  folded: new Set(),
  typing: null,
  pasting: false,
  said: '',
  grasp: 0,
};

/** What is looked at on the sheet of areas and holders of a window. */
export const accessLookOf = makeSheetLook<AccessLook>(NOTHING, { without: withoutWords });

/** Picks a cell and gives it the focus; whatever is typed is left. */
export function goTo(session: Session, areaId: string | null, holderId: string | null): void {
  accessLookOf(session).setState((s) => ({ areaId, holderId, typing: null, grasp: s.grasp + 1 }));
}

/** Shows or hides what lies in a group. */
export function fold(session: Session, id: string, isFolded: boolean): void {
  accessLookOf(session).setState((s) => {
    const folded = new Set(s.folded);
    if (isFolded) folded.add(id);
    else folded.delete(id);
    return { folded };
  });
}
