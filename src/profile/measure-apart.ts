import { hausdorff } from '../geom/hausdorff.ts';
import type { Point } from '../geom/point.ts';
import { squaredDistance } from '../geom/segment-distance.ts';
import { edgePoints, type Vertex } from '../geom/vertex.ts';

/** How far two outlines are from each other, nanometres. */
export interface Apart {
  /** The furthest that any place of either is from the other (the Hausdorff distance of the two lines). */
  readonly most: number;
  /** Where that is, which of the two has that place, and the place of the other that is nearest to it. */
  readonly at: Point;
  readonly of: 'one' | 'other';
  readonly nearest: Point;
  /** The mean over the length of both. */
  readonly mean: number;
  /** The root of the mean square over the length of both. */
  readonly rms: number;
}

/** Places are looked at so far apart, nanometres, and further where there would be more than so many distances. */
const STEP = 20_000;
const MOST_DISTANCES = 1e6;

/**
 * How far two outlines are apart as they lie.
 *
 * @param one closed, its arcs as bulges, in the same frame as the other; nanometres.
 * @returns the largest distance, where it is, the mean and the root mean square.
 * @accuracy the largest distance is that of the chords (0.5 um off an arc) to 0.5 nm; the means are taken over places
 *   20 um apart, or a millionth of all pairs of places and edges: 1 % where outlines are more than 0.01 mm apart.
 * @check tests/unit/profile/measure-apart.test.ts
 */
export function measureApart(one: readonly Vertex[], other: readonly Vertex[]): Apart {
  const [from, to] = [flatOutline(one), flatOutline(other)];
  const { distance: most, at, of, nearest } = hausdorff(from, to);
  return { most, at, of, nearest, ...meanApart(from, to) };
}

/**
 * The mean distance of two closed lines and the root of its mean square, over the length of both.
 *
 * @accuracy see {@link measureApart}.
 */
export function meanApart(from: readonly Point[], to: readonly Point[]): Pick<Apart, 'mean' | 'rms'> {
  const [a, b] = [oneWay(from, to), oneWay(to, from)];
  const length = a.length + b.length;
  return { mean: (a.sum + b.sum) / length, rms: Math.sqrt((a.squares + b.squares) / length) };
}

/** An outline with its arcs as chords. */
export function flatOutline(vertices: readonly Vertex[]): Point[] {
  return vertices.flatMap((vertex, i) => edgePoints(vertex, vertices[(i + 1) % vertices.length]));
}

/** The distances of places along a line from another, summed with the length that each place stands for. */
function oneWay(from: readonly Point[], to: readonly Point[]) {
  const step = Math.max(STEP, (lengthOf(from) * to.length) / MOST_DISTANCES);
  const found = { sum: 0, squares: 0, length: 0 };
  for (const [i, a] of from.entries()) {
    const b = from[(i + 1) % from.length];
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const parts = Math.max(1, Math.ceil(length / step));
    for (let k = 0.5; k < parts; k++) {
      const square = squareTo(to, a.x + ((b.x - a.x) * k) / parts, a.y + ((b.y - a.y) * k) / parts);
      found.sum += (Math.sqrt(square) * length) / parts;
      found.squares += (square * length) / parts;
    }
    found.length += length;
  }
  return found;
}

function lengthOf(ring: readonly Point[]): number {
  return ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length];
    return sum + Math.hypot(b.x - a.x, b.y - a.y);
  }, 0);
}

function squareTo(ring: readonly Point[], x: number, y: number): number {
  let least = Infinity;
  for (let i = 0; i < ring.length; i++) {
    const [a, b] = [ring[i], ring[(i + 1) % ring.length]];
    least = Math.min(least, squaredDistance(x, y, a.x, a.y, b.x, b.y));
  }
  return least;
}
