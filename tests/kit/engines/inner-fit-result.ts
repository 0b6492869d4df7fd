import { type Box, boxOf, type Point } from '../../../src/geom/point.ts';
import type { OpeningShape } from '../../cases/fit-case.ts';

/**
 * What an engine that works by area finds out about the inner-fit region R = {t : blank + t inside opening}.
 * Nanometres. Contact without area is invisible to such engines: for them it looks like an empty region.
 */
export interface InnerFit {
  readonly area: number;
  /** Radius of the largest circle in R: the clearance. 0 where R has no area. */
  readonly radius: number;
  /** `radius` may be too small by this. */
  readonly short: number;
  /** A translation in R with about that much room round it; null where R has no area. */
  readonly witness: Point | null;
  /** Width and height of the piece that holds the witness. */
  readonly play: { readonly lateral: number; readonly vertical: number };
  /** Pieces with area. */
  readonly pieces: number;
  readonly holes: number;
}

/** An engine: the same question put to somebody else's library. */
export type InnerFitEngine = (opening: OpeningShape, blank: readonly Point[]) => InnerFit;

/** The answer where R has no area. */
export const NO_AREA: InnerFit = {
  area: 0,
  radius: 0,
  short: 0,
  witness: null,
  play: { lateral: 0, vertical: 0 },
  pieces: 0,
  holes: 0,
};

/** Below this mean thickness (area over half the outline) a piece is taken for a sliver of the arithmetic, in nanometres. */
export const SLIVER = 0.1;

/** The translations that put the blank's box inside the opening's box; null where they have no area. */
export function windowOf(opening: OpeningShape, blank: readonly Point[]): Box | null {
  const o = boxOf(opening.outer);
  const b = boxOf(blank);
  const box = { minX: o.minX - b.minX, minY: o.minY - b.minY, maxX: o.maxX - b.maxX, maxY: o.maxY - b.maxY };
  return box.minX < box.maxX && box.minY < box.maxY ? box : null;
}

/** Vertices of the box, counter-clockwise. */
export function cornersOf(box: Box): Point[] {
  return [
    { x: box.minX, y: box.minY },
    { x: box.maxX, y: box.minY },
    { x: box.maxX, y: box.maxY },
    { x: box.minX, y: box.maxY },
  ];
}

/** The middle of the box, rounded: the origin in which the engines calculate, so that no digits are lost. */
export function middleOf(box: Box): Point {
  return { x: Math.round((box.minX + box.maxX) / 2), y: Math.round((box.minY + box.maxY) / 2) };
}

/** Whether the insides of the two boxes meet. */
export function boxesOverlap(a: Box, b: Box): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

/** How near {@link largestPassing} comes. */
export function bisectionOf(most: number): number {
  return Math.max(0.01, Math.min(0.2, most * 1e-3), most * 1e-6);
}

/**
 * The largest number up to `most` that passes, and something found there; `most` where it never fails. Bisected to
 * 0.2 nm, or to a millionth where that is more. Null where not even the smallest number tried passes.
 */
export function largestPassing<T>(
  most: number,
  tryOut: (by: number) => T | null,
): { readonly by: number; readonly found: T } | null {
  const enough = bisectionOf(most);
  let best: { readonly by: number; readonly found: T } | null = null;
  let passes = 0;
  let fails = most;
  while (fails - passes > enough) {
    const by = (passes + fails) / 2;
    const found = tryOut(by);
    if (found === null) {
      fails = by;
    } else {
      passes = by;
      best = { by, found };
    }
  }
  return best;
}
