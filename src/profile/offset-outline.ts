import { offset } from '../geom/clip.ts';
import type { Point } from '../geom/point.ts';
import { regionOf } from '../geom/region.ts';
import { makeRing } from '../geom/ring.ts';
import { signedArea } from '../geom/signed-area.ts';
import { edgePoints, makeDrawn, type Vertex } from '../geom/vertex.ts';
import { withArcs } from './find-arcs.ts';
import { notChanged, type OutlineChange } from './outline-change.ts';

/** How an offset goes round a corner: by an arc, so that the gap is the same all round, or by prolonging the edges. */
export type OffsetCorners = 'round' | 'sharp';

/** Greatest distance, in nanometres, between an offset outline and the true one: 1 um. */
export const OFFSET_ERROR = 1_000;

/** Shares of {@link OFFSET_ERROR}: arcs that are there as chords, arcs at corners as chords, chords as arcs again. */
const CHORDS_IN = 100;
const CHORDS_OUT = 100;
const ARCS_AGAIN = 600;

/** Parts of an offset outline smaller than this, square nanometres, are crumbs of rounding: a thousandth of a square mm. */
const CRUMB = 1e9;

/**
 * An outline grown by a gap all round, or shrunk where the gap is negative.
 *
 * @param gap nanometres.
 * @returns the outline, its first vertex the one nearest to the first before; or a fault where it vanishes or falls
 *   into several parts.
 * @accuracy {@link OFFSET_ERROR}. Sharp corners with an angle under about 29 degrees are cut off square.
 * @source clipper-lib, see geom/clip.
 * @check tests/unit/profile/offset-outline.test.ts, tests/laws/outline-operations.test.ts
 */
export function offsetOutline(vertices: readonly Vertex[], gap: number, corners: OffsetCorners): OutlineChange {
  if (!Number.isFinite(gap) || gap === 0)
    return notChanged('The gap must not be 0', 'Give a gap such as 0.05 or -0.05.');
  const ring = makeRing(vertices.flatMap((v, i) => edgePoints(v, vertices[(i + 1) % vertices.length], CHORDS_IN)));
  if (!ring.ok) return notChanged(`The outline is not sound: it ${ring.fault.message}`, 'Mend it first.');
  const join = corners === 'round' ? 'round' : 'mitre';
  const patches = offset(regionOf(ring.ring), gap, join, CHORDS_OUT).filter(({ outer }) => areaOf(outer) > CRUMB);
  if (patches.length === 0) return notChanged('Nothing would be left of the outline', 'Give a smaller gap.');
  if (patches.length > 1)
    return notChanged(`The outline would fall into ${patches.length} parts`, 'Give a smaller gap.');
  const [{ outer, holes }] = patches;
  if (holes.some((hole) => areaOf(hole) > CRUMB))
    return notChanged('A slot of the outline would close and leave a hole inside', 'Give a smaller gap.');
  return soundOf(outer, vertices[0]);
}

/** The outline with arcs for chords where it is sound so, beginning near a place. */
function soundOf(outer: readonly Point[], near: Point): OutlineChange {
  for (const vertices of [withArcs(outer, ARCS_AGAIN), outer]) {
    const made = makeDrawn(vertices);
    if (made.ok) return { ok: true, vertices: beginningNear(made.drawn, near) };
  }
  return notChanged('The outline would touch itself', 'Give a smaller gap.');
}

function beginningNear(vertices: readonly Vertex[], { x, y }: Point): Vertex[] {
  let [least, at] = [Number.POSITIVE_INFINITY, 0];
  for (const [i, v] of vertices.entries()) {
    const square = (v.x - x) ** 2 + (v.y - y) ** 2;
    if (square < least) [least, at] = [square, i];
  }
  return [...vertices.slice(at), ...vertices.slice(0, at)];
}

function areaOf(points: readonly Point[]): number {
  return Math.abs(signedArea(points));
}
