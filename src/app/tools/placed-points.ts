import type { Placement } from '../../fit/fit.ts';
import { type Box, boxOf, type Point } from '../../geom/point.ts';

/** The points of a blank where it stands: turned by the tilt about its origin, then moved. */
export function placed(points: readonly Point[], placement: Placement): Point[] {
  const cos = Math.cos(placement.tilt);
  const sin = Math.sin(placement.tilt);
  return points.map((p) => ({ x: placement.x + p.x * cos - p.y * sin, y: placement.y + p.x * sin + p.y * cos }));
}

/** A blank where it stands in an opening, with the upright boxes of both. */
export interface Standing {
  readonly points: readonly Point[];
  readonly blankBox: Box;
  readonly openingBox: Box;
}

/** Where `blank` stands in `opening` at a placement. */
export function standing(opening: readonly Point[], blank: readonly Point[], placement: Placement): Standing {
  const points = placed(blank, placement);
  return { points, blankBox: boxOf(points), openingBox: boxOf(opening) };
}
