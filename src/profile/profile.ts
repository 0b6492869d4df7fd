import type { Ring } from '../geom/ring.ts';
import type { Vertex } from '../geom/vertex.ts';

/** What a profile is: a keyway as geometry, an uncut key's blade section, or any other thing that goes in. */
export type ProfileKind = 'opening' | 'blank' | 'tool';

/** Which face of the blade a groove is milled into, seen from the bow. */
export type GrooveSide = 'left' | 'right';

/** One milled groove; lengths in nanometres, the angle in radians. */
export interface Groove {
  readonly side: GrooveSide;
  /** Height of the groove's lower edge on the blade's face, above the back of the blade. */
  readonly bottom: number;
  /** Width of the groove on the blade's face. */
  readonly width: number;
  /** How far the groove goes into the blade from its face. */
  readonly depth: number;
  /** How far each flank leans outwards from square; 0 is a square groove. */
  readonly flank: number;
  /** Radius of the two corners at the groove's root. */
  readonly rootRadius: number;
}

/** A blade described the way it is milled; lengths in nanometres. */
export interface Milled {
  readonly thickness: number;
  readonly height: number;
  /** Radius of the two corners at the back (bottom) of the blade. */
  readonly backRadius: number;
  readonly grooves: readonly Groove[];
}

/**
 * One section: its names and its outline in whole nanometres, a blank as seen from the bow, an opening as
 * seen from the front of the plug. `milled` is present where the file describes it by grooves.
 */
export interface Profile {
  readonly id: string;
  readonly kind: ProfileKind;
  readonly name: string;
  /** The section that the profile belongs to, where it belongs to one. */
  readonly section?: string;
  /** Number of pin positions the blank is long enough for, where stated. */
  readonly chambers?: number;
  /** Whether its section was squeezed in later, between its neighbours in chart order; of keyways only. */
  readonly inBetween?: boolean;
  /** Greatest deviation of the outline as made, to either side, in nanometres; the family's where not stated. */
  readonly tolerance?: number;
  readonly ring: Ring;
  /** The vertices that `ring` was made of, arcs as bulges, where the file describes it by its outline. */
  readonly drawn?: readonly Vertex[];
  readonly milled?: Milled;
}
