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

/** A closed outline in the plane z = 0, millimetres. */
export type FlatLoop = readonly { readonly x: number; readonly y: number }[];

/** A flat part of the plane z = 0, hatched as overlaps are and seen through everything before it. */
export interface ShownClash {
  readonly outer: FlatLoop;
  readonly holes: readonly FlatLoop[];
}

/** What is seen. Millimetres, z up. */
export interface SolidPicture {
  readonly solids: readonly ShownSolid[];
  /** The beds that the parts stand on, each in the plane z = 0. */
  readonly beds: readonly BedPlace[];
  /** Overlaps and where their plane lies. */
  readonly clashes: { readonly pose: Pose; readonly parts: readonly ShownClash[] } | null;
  /** Where something is to go: outlines in the plane z = 0 that are drawn heavily; null for none. */
  readonly target: { readonly pose: Pose; readonly loops: readonly FlatLoop[] } | null;
  /** Points that the view is fitted to; they stay where they are while parts move, so that it does not jump. */
  readonly room: readonly SolidPoint[];
}

/** A printer's bed: where it begins, its width and depth, and how much of it is drawn from there on. */
export interface BedPlace {
  readonly x: number;
  readonly y: number;
  readonly size: readonly [number, number];
  readonly drawn: readonly [number, number];
}

/** x, y, z in millimetres. */
export type SolidPoint = readonly [number, number, number];

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

/** The corners of a box that begins at 0, 0, 0, as a pose has them. */
export function boxCorners(pose: Pose, size: SolidPoint): SolidPoint[] {
  const sides = [0, 1] as const;
  return sides.flatMap((i) =>
    sides.flatMap((j) => sides.map((k) => posed(pose, [i * size[0], j * size[1], k * size[2]]))),
  );
}

function posed(pose: Pose, [x, y, z]: SolidPoint): SolidPoint {
  const along = (i: number) => pose[i] * x + pose[4 + i] * y + pose[8 + i] * z + pose[12 + i];
  return [along(0), along(1), along(2)];
}

/** The pose of a solid that is only moved. */
export function movedBy([x, y, z]: readonly [number, number, number]): Pose {
  return [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, x, y, z, 1];
}
