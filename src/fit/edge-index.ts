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
  const starts: Point[] = [];
  const ends: Point[] = [];
  for (const ring of boundaries)
    for (let i = 0; i < ring.length; i++) {
      starts.push(ring[i]);
      ends.push(ring[i + 1 === ring.length ? 0 : i + 1]);
    }
  const lowest = Float64Array.from(starts, (p, i) => Math.min(p.y, ends[i].y));
  const order = Uint32Array.from(starts, (_, i) => i).sort((a, b) => lowest[a] - lowest[b]);
  return fillIndex(starts, ends, lowest, order);
}

function fillIndex(starts: Point[], ends: Point[], lowest: Float64Array, order: Uint32Array): EdgeIndex {
  const edges = new Float64Array(order.length * 4);
  const minY = new Float64Array(order.length);
  const reachY = new Float64Array(order.length);
  let reach = -Infinity;
  for (let i = 0; i < order.length; i++) {
    const [p, q] = [starts[order[i]], ends[order[i]]];
    edges[4 * i] = p.x;
    edges[4 * i + 1] = p.y;
    edges[4 * i + 2] = q.x;
    edges[4 * i + 3] = q.y;
    reach = Math.max(reach, p.y, q.y);
    minY[i] = lowest[order[i]];
    reachY[i] = reach;
  }
  return { edges, minY, reachY };
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
