import { offset } from '../geom/clip.ts';
import { boundariesOf, type Region, regionOf } from '../geom/region.ts';
import type { Ring } from '../geom/ring.ts';
import { simplifyOutline } from '../geom/simplify.ts';
import { type EdgeIndex, edgesOf, indexEdges } from './edge-index.ts';

/** Outlines with more edges than this get a coarse copy. */
export const MANY_EDGES = 150;

/** Outlines with more edges than this are simplified, where they can be, before they are judged at all. */
export const MOST_EDGES = 600;

/** How far a coarse outline may stand off the true one, and how much it is simplified; nanometres. */
const STAND_OFF = 2_000;

/**
 * Few edges that lie outside the opening all along: where one of them crosses something inside the moved blank, the
 * blank does not fit there. They take most of the window away before the many true edges are looked at.
 */
export function coarseOpening(region: Region): EdgeIndex {
  const grown = boundariesOf(offset(region, STAND_OFF + 2, 'mitre'));
  return indexEdges(grown.map((ring) => simplifyOutline(ring, STAND_OFF)));
}

/** Few edges that lie inside the blank all along, x0, y0, x1, y1, the longest first; empty where it is too thin for that. */
export function coarseBlank(rings: readonly Ring[]): Float64Array {
  const shrunk = rings.flatMap((ring) => boundariesOf(offset(regionOf(ring), -STAND_OFF - 2, 'mitre')));
  return longestFirst(shrunk.map((ring) => simplifyOutline(ring, STAND_OFF)).flatMap(edgesOf));
}

/** Edges in one flat list, the longest first. */
export function longestFirst(edges: number[][]): Float64Array {
  const lengthOf = ([x0, y0, x1, y1]: number[]) => Math.hypot(x1 - x0, y1 - y0);
  return Float64Array.from(edges.sort((a, b) => lengthOf(b) - lengthOf(a)).flat());
}
