import type { Point } from '../geom/point.ts';

/** A figure between two bounds. */
export interface Bounds {
  readonly below: number;
  readonly above: number;
}

/** A re-entrant corner without a rounding: the elastic shear there has no bound, so no peak is told at it. */
export interface SharpCorner extends Point {
  /** Angle inside the material, radians, more than pi. */
  readonly angle: number;
}

/** One step of the refinement: how many triangles, and the bounds of the torsion constant on them, mm^4. */
export interface TorsionStep extends Bounds {
  readonly triangles: number;
}

/** The shear over the section, for a picture: packed arrays that are cheap to copy to another thread. */
export interface ShearField {
  /** x0, y0, x1, y1, ..., nanometres. */
  readonly points: Float64Array;
  /** Three numbers of points a triangle, counter-clockwise. */
  readonly triangles: Uint32Array;
  /** Shear stress at each point for a torque of one, 1/mm^3: times a torque in N mm it is MPa. */
  readonly shear: Float64Array;
}

/** What a section bears, by its shape alone. Places in nanometres, all else in powers of millimetres. */
export interface SectionStrength {
  /** mm^2. */
  readonly area: number;
  /** Nanometres. */
  readonly centroid: Point;
  /** Second moments about the centroid, mm^4; `weakest` is the least of all axes. */
  readonly ix: number;
  readonly iy: number;
  readonly ixy: number;
  readonly weakest: number;
  /** Direction of the axis of the least second moment, radians from x. */
  readonly weakAxis: number;
  /** Bending moment over greatest bending stress about the weakest axis, mm^3. */
  readonly weakModulus: number;
  /** Torsion constant J, mm^4: the truth lies between `below` and `above`; `best` is the estimate. */
  readonly torsion: Bounds & { readonly best: number };
  /** The steps of the refinement, coarsest first; the last one is `torsion`. */
  readonly steps: readonly TorsionStep[];
  /** Whether the bounds came as close as was asked. */
  readonly converged: boolean;
  /** Greatest shear stress over torque, 1/mm^3, at least `keepOut` from every sharp corner. An estimate, no bound. */
  readonly peakShear: number;
  /** Where that is, nanometres. */
  readonly peakAt: Point;
  /** Whether that is at a rounding that was drawn as chords: then the true shear is up to 7 % greater. */
  readonly peakOnChords: boolean;
  /** How far from sharp corners the peak is looked for, nanometres; 0 where there is none. */
  readonly keepOut: number;
  /** Fully plastic torque over shear yield stress, mm^3. */
  readonly plasticTorque: Bounds;
  readonly sharpCorners: readonly SharpCorner[];
  /** Smallest radius of a rounded re-entrant corner, nanometres; null where none is known as an arc. */
  readonly leastRootRadius: number | null;
  readonly field: ShearField;
}
