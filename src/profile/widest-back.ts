import { millCorners } from './mill-corners.ts';
import type { Milled } from './profile.ts';
import { crampedEdges } from './round-corners.ts';

/**
 * The greatest back radius, up to the one that a milled description asks for, that the back and the upright edges beside
 * it have room for. Both corners of the back are right angles, so that an arc takes its own radius of either edge.
 *
 * @returns nanometres, not rounded; 0 where there is no room.
 * @check tests/unit/profile/opening-from-blank.test.ts
 */
export function widestBack(milled: Milled): number {
  const corners = millCorners(milled);
  const ofBack = corners.map(({ at, groove }) => groove === undefined && at.y === 0);
  const tooMuch = crampedEdges(corners).map(({ from, length, needed }) => {
    const arcs = [from, (from + 1) % corners.length].filter((corner) => ofBack[corner]).length;
    return arcs === 0 ? 0 : (needed - length) / arcs;
  });
  return Math.max(0, milled.backRadius - Math.max(0, ...tooMuch));
}
