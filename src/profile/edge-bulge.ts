import type { Point } from '../geom/point.ts';
import { arcOf, MAX_BULGE, type Vertex } from '../geom/vertex.ts';
import { notChanged } from './outline-change.ts';

/** A bulge, or why there is none. */
export type BulgeResult = { readonly ok: true; readonly bulge: number } | ReturnType<typeof notChanged>;

/** How a length in nanometres is written for the reader. */
type SayLength = (nm: number) => string;

/** How far the middle of an edge stands off its chord, nanometres; positive to the right of the way, out of the outline. */
export function bowOf(from: Vertex, to: Point): number {
  return ((from.bulge ?? 0) * Math.hypot(to.x - from.x, to.y - from.y)) / 2;
}

/** The radius of an edge, nanometres, with the sign of its bow; 0 where it is straight. */
export function radiusOf(from: Vertex, to: Point): number {
  const arc = arcOf(from, to);
  return arc ? Math.sign(arc.sweep) * arc.radius : 0;
}

/**
 * The bulge of an edge whose middle stands off its chord by `bow`.
 *
 * @param bow nanometres, positive out of an outline that runs counter-clockwise.
 * @source a bulge is the sagitta over half the chord (DXF reference, group code 42).
 */
export function bulgeOfBow(from: Point, to: Point, bow: number): BulgeResult {
  const half = Math.hypot(to.x - from.x, to.y - from.y) / 2;
  if (half === 0) return notChanged('The edge has no length', 'Part its two vertices first.');
  const bulge = bow / half;
  if (Math.abs(bulge) > MAX_BULGE)
    return notChanged('The arc would be nearly a whole circle', 'Give less, or insert a vertex into the edge.');
  return { ok: true, bulge };
}

/**
 * The bulge of an edge that is an arc of a given radius. Of the two arcs of that radius it is the shorter one, or the
 * longer where the edge is more than a half circle already.
 *
 * @param radius nanometres, positive out of an outline that runs counter-clockwise, negative into it.
 * @param say how lengths are written in a fault.
 */
export function bulgeOfRadius(from: Vertex, to: Point, radius: number, say: SayLength): BulgeResult {
  const half = Math.hypot(to.x - from.x, to.y - from.y) / 2;
  if (half === 0) return notChanged('The edge has no length', 'Part its two vertices first.');
  if (radius === 0) return { ok: true, bulge: 0 };
  const size = Math.abs(radius);
  // A half circle typed with the digits shown may fall short of half the edge by a part of the last of them.
  if (size < half * (1 - 1e-3))
    return notChanged(
      `A radius of ${say(size)} does not reach from one end of the edge to the other`,
      `Give at least ${say(half)}, half the edge's length.`,
    );
  const depth = Math.sqrt(Math.max(0, size * size - half * half));
  const long = Math.abs(from.bulge ?? 0) > 1;
  const bow = long ? size + depth : (half * half) / (size + depth);
  return bulgeOfBow(from, to, Math.sign(radius) * bow);
}
