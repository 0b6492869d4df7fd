import type { Point } from '../geom/point.ts';
import { squaredDistance } from '../geom/segment-distance.ts';
import { edgePoints, type Vertex } from '../geom/vertex.ts';

/** How far two outlines are from each other, nanometres. */
export interface Apart {
  /** The furthest that any place of either is from the other (the Hausdorff distance of the two lines). */
  readonly most: number;
  /** Where that is. */
  readonly at: Point;
  /** The mean over the length of both. */
  readonly mean: number;
}

/** Places are looked at so far apart, nanometres, and further where there would be more than so many distances. */
const STEP = 2_000;
const MOST_DISTANCES = 4e6;

/**
 * How far two outlines are apart as they lie.
 *
 * @param one closed, its arcs as bulges, in the same frame as the other; nanometres.
 * @returns the largest distance, where it is, and the mean.
 * @accuracy every vertex is looked at, and places between at most 2 um apart: the largest distance is at most 1 um too
 * small; for outlines of more than some hundred edges a few um.
 * @source F. Hausdorff, Grundzüge der Mengenlehre, 1914, for the distance of two sets; from memory.
 * @check tests/unit/profile/measure-apart.test.ts
 */
export function measureApart(one: readonly Vertex[], other: readonly Vertex[]): Apart {
  const [from, to] = [flat(one), flat(other)];
  const [a, b] = [oneWay(from, to), oneWay(to, from)];
  const furthest = a.most >= b.most ? a : b;
  return { most: furthest.most, at: furthest.at, mean: (a.sum + b.sum) / (a.count + b.count) };
}

function flat(vertices: readonly Vertex[]): Point[] {
  return vertices.flatMap((vertex, i) => edgePoints(vertex, vertices[(i + 1) % vertices.length]));
}

function oneWay(from: readonly Point[], to: readonly Point[]): { most: number; at: Point; sum: number; count: number } {
  const step = Math.max(STEP, (lengthOf(from) * to.length) / MOST_DISTANCES);
  const found = { most: -1, at: from[0], sum: 0, count: 0 };
  for (const place of placesOn(from, step)) {
    const far = distanceTo(to, place);
    found.sum += far;
    found.count++;
    if (far > found.most) [found.most, found.at] = [far, place];
  }
  return found;
}

function* placesOn(ring: readonly Point[], step: number): Generator<Point> {
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length];
    const parts = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / step));
    for (let k = 0; k < parts; k++) yield { x: a.x + ((b.x - a.x) * k) / parts, y: a.y + ((b.y - a.y) * k) / parts };
  }
}

function lengthOf(ring: readonly Point[]): number {
  return ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length];
    return sum + Math.hypot(b.x - a.x, b.y - a.y);
  }, 0);
}

function distanceTo(ring: readonly Point[], { x, y }: Point): number {
  let least = Infinity;
  for (let i = 0; i < ring.length; i++) {
    const [a, b] = [ring[i], ring[(i + 1) % ring.length]];
    least = Math.min(least, squaredDistance(x, y, a.x, a.y, b.x, b.y));
  }
  return Math.sqrt(least);
}
