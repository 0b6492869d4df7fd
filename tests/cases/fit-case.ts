import type { Point } from '../../src/geom/point.ts';

/** An opening as raw vertices: a boundary and, where material stands free inside it, islands. Nanometres. */
export interface OpeningShape {
  readonly outer: readonly Point[];
  readonly islands: readonly (readonly Point[])[];
}

/**
 * What is known of a fit without computing it with anything of ours: by a formula, or by the way the case was
 * built. Lengths in nanometres, areas in square nanometres. A value left out is not known.
 */
export interface KnownFit {
  /** fits: there is room to spare. contact: it goes in with clearance 0. blocked: it does not go in. */
  readonly outcome?: 'fits' | 'contact' | 'blocked';
  /** Greatest uniform gap. */
  readonly clearance?: number;
  /** Least depth over all placements, where blocked. */
  readonly interference?: number;
  /** `clearance` and `interference` are true within this. */
  readonly within?: number;
  /** Area of the inner-fit region. */
  readonly area?: number;
  /** `area` is true within this. */
  readonly areaWithin?: number;
  /** Pieces of the inner-fit region that have area. */
  readonly pieces?: number;
  /** Holes of the inner-fit region. */
  readonly holes?: number;
  readonly play?: { readonly lateral: number; readonly vertical: number };
  /** Vertices of the inner-fit region where it is a point, a segment or one simple polygon. */
  readonly region?: readonly Point[];
  /** Placements that must be found to fit, exactly. */
  readonly fitting?: readonly Point[];
  /** Placements that must be found not to fit, exactly. */
  readonly colliding?: readonly Point[];
}

/** One blank, one opening, and what is known of the two. */
export interface FitCase {
  readonly name: string;
  readonly opening: OpeningShape;
  readonly blank: readonly Point[];
  readonly known: KnownFit;
  /** Why `known` holds, in words and arithmetic. */
  readonly why: string;
}

/** An opening without islands. */
export function plainOpening(outer: readonly Point[]): OpeningShape {
  return { outer, islands: [] };
}

/** Points of number pairs given in millimetres, rounded to whole nanometres. */
export function mm(pairs: readonly (readonly [number, number])[]): Point[] {
  return pairs.map(([x, y]) => ({ x: Math.round(x * 1e6), y: Math.round(y * 1e6) }));
}

/** An upright rectangle with its lower left corner at (x, y), nanometres, counter-clockwise. */
export function rectangle(x: number, y: number, width: number, height: number): Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}
