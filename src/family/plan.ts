/** A part of the site: one with a keyway of its own, or a group of others. */
export interface Area {
  readonly id: string;
  readonly name: string;
  /** Id of the group that it lies in; the top of the tree where absent. */
  readonly parent?: string;
  /** Name of its section, where it is not the area's own name; areas with one name share the section. */
  readonly section?: string;
}

/** A person or a role, and the areas that their blank is for. A group stands for all areas in it, later ones too. */
export interface Holder {
  readonly id: string;
  readonly name: string;
  /** Ids of areas and groups that the blank must enter. */
  readonly enters: readonly string[];
  /** Ids of areas and groups that the blank may enter or not. */
  readonly free?: readonly string[];
}

/** What the blades of a planned family may be made like; lengths in nanometres, the angle in radians. */
export interface BladeLimits {
  readonly thickness: number;
  readonly height: number;
  readonly backRadius: number;
  /** Height below the upper edge that is kept free of wards, for the cuts. */
  readonly cutZone: number;
  /** Height above the back that is kept free of wards. */
  readonly backZone: number;
  /** Width of a groove on the face of the blade. */
  readonly grooveWidth: number;
  /** From one possible groove to the next on the same side, lower edge to lower edge. */
  readonly heightStep: number;
  /** Greatest depth of a groove. */
  readonly grooveDepth: number;
  /** Difference between two depths at one site, where it has several. */
  readonly depthStep: number;
  /** Lean of each flank of the cutter from square. */
  readonly flank: number;
  /** Radius of the cutter's corners, and so of the two corners at a groove's root. */
  readonly rootRadius: number;
  readonly sides: 'left' | 'right' | 'both';
}

/** Most sections that room may be kept for. */
export const MOST_RESERVE = 1_000;

/** What a family is planned from. The gap, the tolerance and the least web are those of the family. */
export interface Plan {
  readonly areas: readonly Area[];
  readonly holders: readonly Holder[];
  /** Whether each section gets a blank that enters it alone. */
  readonly baseBlanks: boolean;
  /** Whether there is a blank that enters every section. */
  readonly allSection: boolean;
  /** Further sections that room is kept for. */
  readonly reserve: number;
  /** By how many wards, each enough by itself, a blank is stopped where it must not go in: 1, 2 or 3. */
  readonly stops: number;
  /** How many depths a ward may have at one site; 1: it is there or not. */
  readonly depths: number;
  readonly blade: BladeLimits;
}
