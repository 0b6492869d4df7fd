import type { Vertex } from '../geom/vertex.ts';
import type { FileFault } from './json/file-fault.ts';

/** One line of a drawing made elsewhere: a chain of vertices, closed or open. */
export interface DrawnPath {
  /** Nanometres as fractions, x right, y up, where the drawing has them; arcs as bulges, other curves as chords. */
  readonly vertices: readonly Vertex[];
  /** Whether the last vertex is joined to the first (which is not repeated). */
  readonly closed: boolean;
  /** What the drawing calls it: an id, a title, a layer; empty where it calls it nothing. */
  readonly label: string;
}

/** A drawing made elsewhere, as far as lines can be taken from it. */
export interface Drawing {
  readonly paths: readonly DrawnPath[];
  /** Nanometres in one unit of the drawing, as used for `paths`. */
  readonly nmPerUnit: number;
  /** Whether the drawing itself says so; else `nmPerUnit` is a guess that the user should look at. */
  readonly unitsStated: boolean;
  /** What was left out or is doubtful, and what to do; empty where all was understood. */
  readonly notes: readonly FileFault[];
}

/** How a drawing is to be read. */
export interface DrawingOptions {
  /** Nanometres in one unit of the drawing, in place of what the drawing says. */
  readonly nmPerUnit?: number;
}

/** A drawing with at least one path, or why there is none. */
export type DrawingRead =
  | { readonly ok: true; readonly drawing: Drawing }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

/** Greatest distance, in nanometres, between a curve of a drawing and the chords that stand for it. */
export const CURVE_CHORD_ERROR = 500;
