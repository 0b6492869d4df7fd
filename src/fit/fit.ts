import type { Point } from '../geom/point.ts';
import type { Region } from '../geom/region.ts';

/** enters: the clearance is at least the running clearance. tight: it goes in with less. blocked: it does not go in. */
export type Verdict = 'enters' | 'tight' | 'blocked';

/** Where a blank stands in an opening: turned by `tilt` about its own origin, then moved by (x, y). */
export interface Placement {
  /** Nanometres. */
  readonly x: number;
  /** Nanometres. */
  readonly y: number;
  /** Radians, counter-clockwise. */
  readonly tilt: number;
}

/** How far a blank can wander in an opening, in nanometres: the size of the piece of the inner-fit region it stands in. */
export interface Play {
  readonly lateral: number;
  readonly vertical: number;
}

/** The answer for one blank or tool in one opening. Lengths in nanometres. */
export interface Fit {
  readonly verdict: Verdict;
  /** Uniform gap in the best placement, or minus the interference where blocked. */
  readonly clearance: number;
  /** The true value of `clearance` lies within this of it. */
  readonly accuracy: number;
  /** The best placement: greatest clearance, or least interference. */
  readonly placement: Placement;
  /** Zero both ways where blocked. */
  readonly play: Play;
  /** The lowest placement reached from the best one without leaving the opening: where springs press the key. */
  readonly seated: Placement;
}

/** Which part of the plug stands in the way, seen from the front: a side wall or its wards, the floor, the roof. */
export type WardSide = 'left' | 'right' | 'bottom' | 'top';

/** One place where blank and plug would share the same space, in the opening's coordinates. */
export interface Collision {
  readonly region: Region;
  readonly side: WardSide;
  /** True where the plug material stands into the keyway (a ward), false where it is the plain wall. */
  readonly ward: boolean;
  /** Height band above the floor of the keyway as it is judged (worn, where it is), its lowest point; nanometres. */
  readonly from: number;
  readonly to: number;
  /** Greatest distance of a colliding point of the blank from the opening, nanometres. */
  readonly depth: number;
}

/** A corner or an edge of an outline, by its number; an edge has the number of its first corner. */
export interface Feature {
  readonly kind: 'corner' | 'edge';
  readonly index: number;
}

/** A place where the gap between blank and opening is least: what sets the clearance. Opening's coordinates, nanometres. */
export interface Contact {
  readonly onBlank: Point;
  readonly onOpening: Point;
  readonly blankFeature: Feature;
  readonly openingFeature: Feature;
  /** Length between the two, nanometres. */
  readonly gap: number;
  readonly side: WardSide;
  readonly ward: boolean;
  /** Height of the place on the opening above the floor of the keyway as it is judged, its lowest point; nanometres. */
  readonly height: number;
}
