import type { Walls } from '../geom/deepest-point.ts';
import type { Box } from '../geom/point.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';

/**
 * The segments in translation space on which the blank's first contacts lie, as far as they meet `box`:
 * (opening edge) - (blank vertex that sticks out), and (tip of a ward) - (blank edge).
 *
 * The boundary of the inner-fit region is made of parts of them, and for a placement t inside the region the
 * distance from t to the nearest of them is the gap between blank and opening.
 *
 * @returns x0, y0, x1, y1 a segment, nanometres.
 */
export function limitSegments(opening: Opening, blank: Blank, box: Box): Walls {
  const found: number[] = [];
  const { edges } = opening.index;
  const { convex } = blank;
  for (let i = 0; i < edges.length; i += 4)
    for (let k = 0; k < convex.length; k += 2)
      pushIfMeets(
        found,
        box,
        edges[i] - convex[k],
        edges[i + 1] - convex[k + 1],
        edges[i + 2] - convex[k],
        edges[i + 3] - convex[k + 1],
      );
  const { reflex } = opening;
  for (let i = 0; i < reflex.length; i += 2)
    for (let k = 0; k < blank.edges.length; k += 4) {
      const b = blank.edges;
      pushIfMeets(
        found,
        box,
        reflex[i] - b[k],
        reflex[i + 1] - b[k + 1],
        reflex[i] - b[k + 2],
        reflex[i + 1] - b[k + 3],
      );
    }
  return Float64Array.from(found);
}

function pushIfMeets(found: number[], box: Box, x0: number, y0: number, x1: number, y1: number): void {
  if ((x0 < box.minX && x1 < box.minX) || (x0 > box.maxX && x1 > box.maxX)) return;
  if ((y0 < box.minY && y1 < box.minY) || (y0 > box.maxY && y1 > box.maxY)) return;
  found.push(x0, y0, x1, y1);
}
