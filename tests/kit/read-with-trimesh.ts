import { askPython } from './ask-python.ts';

/** A solid as trimesh reads it; millimetres. */
export interface TrimeshSolid {
  /** Null where the format has no names. */
  readonly name: string | null;
  readonly watertight: boolean;
  readonly oriented: boolean;
  readonly volume: number;
  readonly bounds: readonly [readonly number[], readonly number[]];
  /** How often an edge is used, least and most. */
  readonly edgeUses: readonly [number, number];
  readonly euler: number;
  readonly bodies: number;
  readonly triangles: number;
  readonly degenerate: number;
  /** Areas of cuts square to z at the heights asked for. */
  readonly areas: readonly number[];
}

/** What stands in a 3MF file's model. */
export interface ModelXml {
  readonly unit: string;
  readonly tag: string;
  readonly files: readonly string[];
  readonly titles: readonly string[];
  readonly objects: readonly {
    readonly id: string;
    readonly type: string;
    readonly name: string;
    readonly colour: string;
    readonly letterColours: readonly string[];
    readonly raised: number;
    readonly triangles: number;
    readonly vertices: number;
    readonly transform: string;
  }[];
}

/** A file of solids. */
export interface TrimeshFile {
  readonly meshes: readonly TrimeshSolid[];
  readonly units: string | null;
  readonly xml: ModelXml | null;
  readonly bounds?: readonly [readonly number[], readonly number[]];
}

const SCRIPT = { library: 'trimesh', script: 'read-with-trimesh.py' };

/**
 * STL and 3MF files as trimesh reads them.
 *
 * @param heights where solids are cut, millimetres.
 * @throws with what to do where trimesh is missing, and with its own words where it refuses a file.
 */
export function readWithTrimesh(files: readonly string[], heights: readonly number[] = []): TrimeshFile[] {
  return askPython({ ...SCRIPT, input: JSON.stringify({ files, heights }) }) as TrimeshFile[];
}

/** A coupon's file with the motion that brings it into the block, and the height of the cut. */
export interface PosedCoupon {
  readonly coupon: string;
  readonly pose: readonly number[];
  readonly height: number;
}

/** The area, in one cut, that each coupon shares with the block, and its own, square millimetres. */
export function sharedWithTrimesh(block: string, pairs: readonly PosedCoupon[]): { shared: number; blade: number }[] {
  return askPython({ ...SCRIPT, input: JSON.stringify({ block, pairs }) }) as { shared: number; blade: number }[];
}
