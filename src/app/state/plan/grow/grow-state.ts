import { type Family, openingsOf } from '../../../../family/family.ts';
import type { GrowInput } from '../../../../plan/grow-family.ts';
import { makeSheetLook } from '../../sheet-look.ts';

/** What is asked about room to grow, and which proposal is looked at. */
export interface GrowState {
  /** Ids of the two keyways that the next sections are to lie between; null: anywhere. */
  readonly first: string | null;
  readonly second: string | null;
  /** Ids of group blanks that may enter new keyways. */
  readonly allowed: readonly string[];
  readonly top: GrowInput['top'];
  /** Number of the proposal that is looked at. */
  readonly picked: number;
  /** The name that was typed for it; null: the one that is proposed. */
  readonly name: string | null;
  /** Why it was not added; empty otherwise. */
  readonly trouble: string;
}

const NOTHING: GrowState = {
  first: null,
  second: null,
  allowed: [],
  top: 'blank',
  picked: 0,
  name: null,
  trouble: '',
};

/** What is asked about room to grow in a window; another family begins anew. */
export const growStateOf = makeSheetLook(NOTHING, { without: () => null });

/** The question for a family; what the family does not have any more is left out. */
export function growInput(family: Family, { first, second, allowed, top }: GrowState): GrowInput {
  const openings = openingsOf(family).map(({ id }) => id);
  const both = first !== null && second !== null && first !== second;
  const between = both && openings.includes(first) && openings.includes(second) ? ([first, second] as const) : null;
  return {
    family,
    allowed: allowed.filter((id) => family.profiles.some((profile) => profile.id === id)),
    between,
    top,
    stops: family.plan?.stops ?? 1,
  };
}
