import { makeSheetLook } from '../../sheet-look.ts';

/** What of a plan's blade is looked at. */
export interface BladeLook {
  /** The picked ward site by its place in the layout, lowest first. */
  readonly site: number;
  /** A value that was not taken: its field, and why. */
  readonly refused: { readonly field: string; readonly words: string } | null;
}

const NOTHING: BladeLook = { site: 0, refused: null };

/** What is looked at on the blade sheet of a window. */
export const bladeLookOf = makeSheetLook<BladeLook>(NOTHING, {
  without: ({ refused }) => refused && { refused: null },
});
