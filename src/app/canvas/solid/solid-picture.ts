/** Sixteen numbers, column by column: turns and moves a solid, millimetres. */
export type Pose = readonly number[];

/** A mesh as it is printed; millimetres, three numbers a corner, three corners a triangle. */
export interface SolidMesh {
  readonly positions: Float32Array;
  readonly triangles: Uint32Array;
  /** Number of the first triangle of the raised letters, which are the last ones. */
  readonly lettersFrom: number;
}

/** One solid of a picture. */
export interface ShownSolid {
  readonly id: string;
  readonly mesh: SolidMesh;
  readonly pose: Pose;
  /** CSS colours of its faces, and of those of its raised letters. */
  readonly fill: string;
  readonly letterFill: string;
  /** Seen through: what lies behind it matters. */
  readonly faint?: boolean;
  /** Drawn with heavy edges. */
  readonly picked?: boolean;
}

/** A flat part of the plane z = 0, hatched as overlaps are and seen through everything before it. */
export interface ShownClash {
  readonly outer: readonly { readonly x: number; readonly y: number }[];
  readonly holes: readonly (readonly { readonly x: number; readonly y: number }[])[];
}

/** What is seen. Millimetres, z up. */
export interface SolidPicture {
  readonly solids: readonly ShownSolid[];
  /** The beds that the parts stand on, each in the plane z = 0. */
  readonly beds: readonly BedPlace[];
  /** Overlaps and where their plane lies. */
  readonly clashes: { readonly pose: Pose; readonly parts: readonly ShownClash[] } | null;
  /** The room that the view is fitted to, so that it does not jump while parts move. */
  readonly room: SolidBox;
}

/** A printer's bed: where it begins, and its width and depth. */
export interface BedPlace {
  readonly x: number;
  readonly y: number;
  readonly size: readonly [number, number];
}

/** A box along the axes, millimetres. */
export interface SolidBox {
  readonly least: readonly [number, number, number];
  readonly most: readonly [number, number, number];
}

/** Colours of a scene by their role, CSS colours. */
export interface SolidColours {
  readonly ground: string;
  readonly edge: string;
  readonly bed: string;
  readonly pick: string;
  readonly clash: string;
  readonly clashGround: string;
  readonly clashEdge: string;
}

/** The pose of a solid that is only moved. */
export function movedBy([x, y, z]: readonly [number, number, number]): Pose {
  return [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, x, y, z, 1];
}
