import type { Ring } from '../geom/ring.ts';
import type { IndentSide } from '../passage/indents.ts';
import type { Milled } from '../profile/profile.ts';
import type { Between } from './between-codes.ts';

/** A place for wards of new sections. Heights above the back of the all-section blank, nanometres. */
export interface GrowPlace {
  readonly side: IndentSide;
  readonly from: number;
  readonly to: number;
  /** How many depths a ward may have there. */
  readonly levels: number;
  /** How many keyways have a ward there. */
  readonly used: number;
}

/** A pair and the length that it sets, nanometres. */
export interface GrowPair {
  /** Ids of existing profiles; null for the new section's own. */
  readonly blank: string | null;
  readonly keyway: string | null;
  readonly length: number;
  /** How many other pairs set the same guard margin; absent where none does, or they were not counted. */
  readonly alike?: number;
}

/** A section as it is added to a family. */
export interface GrownSection {
  readonly ring: Ring;
  /** Where it reads as a milled one. */
  readonly milled?: Milled;
}

/** A further section that could be added, drawn and confirmed. */
export interface GrowProposal {
  /** Depth number of its ward at each place, 0 for none. */
  readonly code: readonly number[];
  readonly keyway: GrownSection;
  readonly blank: GrownSection;
  /** How it lies between the neighbours; null without. */
  readonly between: Between | null;
  /** The least wear at which a blank first goes where it must not: into the new keyway, or the new blank into another one. */
  readonly guard: GrowPair | null;
  /** The smallest clearance of the blanks that have to enter the new keyway. */
  readonly clearance: GrowPair;
  /** Existing blanks that come closest to entering it, the closest first. */
  readonly closest: readonly GrowPair[];
  /** Sections that could still be added after it; null where it was not counted. */
  readonly roomAfter: number | null;
}

/** Why no further section can be said. */
export type NoRoom =
  | { readonly why: 'no-keyways' | 'one-keyway' }
  /** No blank enters all keyways; `passage` tells whether a blank exists that could. */
  | { readonly why: 'no-all-section'; readonly passage: Ring | null }
  | { readonly why: 'no-sites' };

/** How many further sections there could be. */
export interface GrowCount {
  /** So many were drawn and confirmed together. */
  readonly confirmed: number;
  /** No more than that over these places, each part kept out by a ward of its own. */
  readonly atMost: number;
  /** How many different sections could be added, one at a time. */
  readonly single: number;
}

/** Room to grow of a family. */
export interface GrowReport {
  readonly none: NoRoom | null;
  /** Ids of the all-section blanks; empty where the widest passage blank stands for one. */
  readonly tops: readonly string[];
  /** The blank that all further sections are entered by, where it is not in the family yet. */
  readonly newTop: Ring | null;
  /** Group blanks of the family, with the number of keyways that each enters. */
  readonly groups: readonly { readonly id: string; readonly enters: number }[];
  readonly places: readonly GrowPlace[];
  /** For each keyway its wards at the places. */
  readonly codes: readonly { readonly id: string; readonly code: readonly number[] }[];
  readonly count: GrowCount;
  /** The greatest guard margin first. */
  readonly proposals: readonly GrowProposal[];
  /** The gap of new blanks in their keyways, nanometres. */
  readonly gap: number;
}
