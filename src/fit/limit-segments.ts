import type { Walls } from '../geom/deepest-point.ts';
import type { Box } from '../geom/point.ts';
import { type EdgeIndex, firstReaching } from './edge-index.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';

/**
 * The segments in translation space on which the blank's first contacts lie, as far as they meet `box`:
 * (opening edge) - (blank vertex that sticks out), and (tip of a ward) - (blank edge), each only where the two can
 * touch from the right side.
 *
 * The boundary of the inner-fit region is made of parts of them, none enters its inside, and for a placement t in
 * the region the distance from t to the nearest of them is the gap between blank and opening.
 *
 * @returns x0, y0, x1, y1 a segment, nanometres.
 */
export function limitSegments(opening: Opening, blank: Blank, box: Box): Walls {
  const found: number[] = [];
  for (let k = 0; k < blank.convex.length; k += 6) vertexAgainstEdges(found, box, blank.convex, k, opening.index);
  const tips = opening.reflex();
  for (let i = 0; i < tips.length; i += 6) tipAgainstEdges(found, box, tips, i, blank.index);
  return Float64Array.from(found);
}

/** A corner of the blank against the edges of the opening on whose inner side both its edges lie. */
function vertexAgainstEdges(found: number[], box: Box, corners: Float64Array, k: number, index: EdgeIndex): void {
  const { edges, minY, reachY } = index;
  const x = corners[k];
  const y = corners[k + 1];
  for (let i = firstReaching(reachY, y + box.minY); i < minY.length && minY[i] - y <= box.maxY; i++) {
    const e = i * 4;
    const x0 = edges[e] - x;
    const x1 = edges[e + 2] - x;
    if ((x0 < box.minX && x1 < box.minX) || (x0 > box.maxX && x1 > box.maxX)) continue;
    const y0 = edges[e + 1] - y;
    const y1 = edges[e + 3] - y;
    if (y0 < box.minY && y1 < box.minY) continue;
    if (isBetweenEdges(corners, k, x1 - x0, y1 - y0)) found.push(x0, y0, x1, y1);
  }
}

/** The tip of a ward against the edges of the blank on whose outer side the ward lies. */
function tipAgainstEdges(found: number[], box: Box, corners: Float64Array, k: number, index: EdgeIndex): void {
  const { edges, minY, reachY } = index;
  const x = corners[k];
  const y = corners[k + 1];
  for (let i = firstReaching(reachY, y - box.maxY); i < minY.length && y - minY[i] >= box.minY; i++) {
    const e = i * 4;
    const x0 = x - edges[e];
    const x1 = x - edges[e + 2];
    if ((x0 < box.minX && x1 < box.minX) || (x0 > box.maxX && x1 > box.maxX)) continue;
    const y0 = y - edges[e + 1];
    const y1 = y - edges[e + 3];
    if (y0 > box.maxY && y1 > box.maxY) continue;
    if (isBetweenEdges(corners, k, x1 - x0, y1 - y0)) found.push(x0, y0, x1, y1);
  }
}

/**
 * Whether a direction lies between those of the edges before and after a corner, as it must for the two to touch. A
 * blank's edge is mirrored in translation space, so for the tip of a ward, which turns the other way, the test is the same.
 */
function isBetweenEdges(corners: Float64Array, k: number, dx: number, dy: number): boolean {
  return dx * corners[k + 5] - dy * corners[k + 4] >= 0 && dx * corners[k + 3] - dy * corners[k + 2] <= 0;
}
