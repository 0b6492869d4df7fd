import type { Point } from '../geom/point.ts';
import { turn } from '../geom/predicates.ts';

/** Edges sorted for quick look-up of those within a band of heights. Nanometres. */
export interface EdgeIndex {
  /** Edges as x0, y0, x1, y1, the inside to the left, sorted by their lowest y. */
  readonly edges: Float64Array;
  readonly minY: Float64Array;
  /** `reachY[i]` is the greatest y of edges 0 to i: the first edge that reaches a height is found by bisection. */
  readonly reachY: Float64Array;
}

/** Sorts the edges of some boundaries into an index. */
export function indexEdges(boundaries: readonly (readonly Point[])[]): EdgeIndex {
  const edges = boundaries.flatMap(edgesOf);
  edges.sort((a, b) => Math.min(a[1], a[3]) - Math.min(b[1], b[3]));
  const minY = new Float64Array(edges.length);
  const reachY = new Float64Array(edges.length);
  let reach = -Infinity;
  for (const [i, [, y0, , y1]] of edges.entries()) {
    reach = Math.max(reach, y0, y1);
    minY[i] = Math.min(y0, y1);
    reachY[i] = reach;
  }
  return { edges: Float64Array.from(edges.flat()), minY, reachY };
}

/** First edge of the index after which some edge reaches `y` or higher; no edge before it does. */
export function firstReaching(reachY: Float64Array, y: number): number {
  let low = 0;
  let high = reachY.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (reachY[middle] >= y) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Edges of a closed boundary as x0, y0, x1, y1. */
export function edgesOf(ring: readonly Point[]): number[][] {
  return ring.map((p, i) => [p.x, p.y, ring[(i + 1) % ring.length].x, ring[(i + 1) % ring.length].y]);
}

/**
 * Corners of the boundaries that turn left (`sign` 1) or right (-1), six numbers a corner: x, y, the direction of the
 * edge before it and of the edge after it.
 */
export function cornersOf(boundaries: readonly (readonly Point[])[], sign: 1 | -1): Float64Array {
  const found: number[] = [];
  for (const ring of boundaries)
    ring.forEach((p, i) => {
      const before = ring[(i + ring.length - 1) % ring.length];
      const after = ring[(i + 1) % ring.length];
      if (sign * turn(before, p, after) > 0)
        found.push(p.x, p.y, p.x - before.x, p.y - before.y, after.x - p.x, after.y - p.y);
    });
  return Float64Array.from(found);
}
