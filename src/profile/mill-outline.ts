import type { Point } from '../geom/point.ts';
import type { Vertex } from '../geom/vertex.ts';
import { checkMilled, type MillFault, type SayLength } from './check-milled.ts';
import { millCorners } from './mill-corners.ts';
import type { Milled } from './profile.ts';
import { roundCorners, roundedVertices } from './round-corners.ts';

/**
 * The outline of a blade that is described by the way it is milled, seen from the bow.
 *
 * The blade stands with its back on y = 0, its left face on x = 0 and its right face on x = thickness. A groove
 * opens on its face from `bottom` to `bottom + width`; its flanks lean so that it narrows towards its root by
 * depth * tan(flank) on each side; the two corners of its root are arcs of `rootRadius`, tangent to flank and root.
 * The two corners of the back are arcs of `backRadius`; the upper corners, where the cuts go, stay sharp. A groove
 * that starts at the back or ends at the upper edge is a step: it has no flank on that side.
 *
 * The same description draws an opening: what is a groove of the blade is then a ward of the plug, and `rootRadius`
 * rounds the ward's tip.
 *
 * @param milled lengths in nanometres, angles in radians.
 * @param say how a length is written in a fault; millimetres unless told otherwise.
 * @returns a simple outline in whole nanometres, counter-clockwise, starting at the left end of the back; or the
 *   first fault of the description.
 * @accuracy vertices lie on the true outline to 0.71 nm. Chords of arcs are within 1 um of it, always towards the
 *   arc's centre: at a rounded back the blade is drawn too small, at a groove's root too large (a blank errs to
 *   the safe side there; an opening's ward is drawn too small by as much).
 * @check tests/unit/profile/mill-outline.test.ts, and tests/unit/profile/random-blades.test.ts by area
 */
export function millOutline(milled: Milled, say?: SayLength): Point[] | MillFault {
  const [fault] = checkMilled(milled, say);
  return fault ?? roundCorners(millCorners(milled).map(({ at, radius }) => ({ at, radius })));
}

/**
 * The vertices of a milled blade with its roundings as arcs, for drawing and editing; the outline of
 * {@link millOutline} within 1 um.
 *
 * @param milled a description without a fault.
 * @check tests/unit/profile/mill-outline.test.ts
 */
export function millVertices(milled: Milled): Vertex[] {
  return roundedVertices(millCorners(milled).map(({ at, radius }) => ({ at, radius })));
}
