import { makeSheetLook } from '../sheet-look.ts';
import type { BlockChoices } from './block-settings.ts';

/** What the Display block sheet shows. */
export type BlockPart = 'settings' | 'set' | 'try';

/** What is chosen and looked at on the Display block sheet. */
export interface BlockLook extends BlockChoices {
  readonly part: BlockPart;
  /** Name of the part that is pointed out. */
  readonly picked: string | null;
  /** The bed that is looked at, from 0; null: all. */
  readonly bed: number | null;
  /** How far the tip of the coupon is past the front of the block, millimetres as printed; null: it waits before it. */
  readonly inserted: number | null;
  /** Whether the block is seen through. */
  readonly through: boolean;
}

const NOTHING: BlockLook = {
  part: 'set',
  openings: null,
  blanks: null,
  columns: null,
  picked: null,
  bed: null,
  inserted: null,
  through: false,
};

/** What is chosen and looked at in a window; another family begins anew. */
export const blockLookOf = makeSheetLook(NOTHING, {
  without: (look) => (look.inserted === null ? null : { inserted: null }),
});

/** The look with a part pointed out; a bed that it does not lie on gives way to its own. */
export function pickPart(
  { name, bed }: { readonly name: string; readonly bed: number },
  only: number | null,
): Pick<BlockLook, 'picked' | 'bed'> {
  return { picked: name, bed: only === null ? null : bed };
}
