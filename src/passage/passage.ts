import type { Fit } from '../fit/fit.ts';
import type { Point } from '../geom/point.ts';
import type { Region } from '../geom/region.ts';
import type { Ring } from '../geom/ring.ts';
import type { Milled } from '../profile/profile.ts';
import type { Sureness } from './align-regions.ts';

/** A keyway as the search takes it. */
export interface PassageOpening {
  readonly id: string;
  readonly ring: Ring;
}

/** Where a part of a keyway lies that a blank leaves unused, seen from the blank. */
export type LossSide = 'left' | 'right' | 'above' | 'below' | 'around';

/** One part that a keyway alone would give to its blank and the common blank does not have. */
export interface LossPlace {
  readonly side: LossSide;
  /** Height band above the back of the common blank, nanometres. */
  readonly from: number;
  readonly to: number;
  /** Square nanometres. */
  readonly area: number;
}

/** What the common blank does not have of what one keyway alone would give to its blank. */
export interface Loss {
  /** Area of the widest blank of this keyway alone, square nanometres. */
  readonly own: number;
  /** The part of it that the common blank does not have, square nanometres, and as a share of it, 0 to 1. */
  readonly area: number;
  readonly share: number;
  /** The largest first. */
  readonly places: readonly LossPlace[];
  readonly region: Region;
}

/** One chosen keyway in a passage. */
export interface PassageMember {
  readonly id: string;
  /** How the keyway as drawn is moved to lie round the common blank, whole nanometres. */
  readonly move: Point;
  /** Null where there is no common blank. */
  readonly loss: Loss | null;
}

/** How the widest blank goes into one keyway of the family. */
export interface PassageEntry {
  readonly id: string;
  readonly chosen: boolean;
  readonly fit: Fit;
}

/** Why there is no blank. none-chosen; too-narrow: keyways that alone take no blank at all; nothing-shared. */
export type NoBlank =
  | { readonly why: 'none-chosen' }
  | { readonly why: 'too-narrow'; readonly ids: readonly string[] }
  | { readonly why: 'nothing-shared' };

/** A groove of the common blank, and the keyways that need it. Heights above the back of the blank, nanometres. */
export interface PassageGroove {
  readonly side: 'left' | 'right';
  readonly from: number;
  readonly to: number;
  readonly depth: number;
  /** Where the face lies that it is in, as x. */
  readonly face: number;
  /** Ids of the chosen keyways that have a ward there. */
  readonly ids: readonly string[];
}

/** The widest blank that passes all chosen keyways. Its back lies on y = 0, its leftmost point on x = 0. Nanometres. */
export interface PassageBlank {
  readonly ring: Ring;
  readonly width: number;
  readonly height: number;
  /** Square nanometres. */
  readonly area: number;
  /** The thinnest level web, and the height band that is as thin. */
  readonly web: { readonly thickness: number; readonly from: number; readonly to: number };
  /** From below. */
  readonly grooves: readonly PassageGroove[];
  /** Parts of the common region that do not hang together with the blade, the largest first: they are left out. */
  readonly apart: readonly { readonly region: Region; readonly area: number }[];
  /** Whether it was found to enter every chosen keyway with the running clearance. */
  readonly entersAll: boolean;
  /** Present where it is restricted to straight cutters: how it is milled, and the area of the widest one without that. */
  readonly milled?: { readonly blade: Milled; readonly free: number };
}

/** What some keyways have in common. Everything lies in the frame of the blank, or of the common region without one. */
export interface Passage {
  /** In the order of the ids, so that the order of choosing changes nothing. */
  readonly members: readonly PassageMember[];
  /** Part of the plane that lies in every chosen keyway at this alignment. */
  readonly common: Region;
  /** Area of {@link common}, square nanometres. */
  readonly area: number;
  /** Null where nothing was chosen. */
  readonly sure: Sureness | null;
  readonly blank: PassageBlank | null;
  readonly none: NoBlank | null;
  /** Every keyway of the family, in the order given; empty where there is no blank. */
  readonly entries: readonly PassageEntry[];
  /** The running clearance that it was made for, nanometres. */
  readonly clearance: number;
}
