import type { Placement } from '../../fit/fit.ts';
import { type Box, boxOf, type Point } from '../../geom/point.ts';

/** The points of a blank where it stands: turned by the tilt about its origin, then moved. */
export function placed(points: readonly Point[], placement: Placement): Point[] {
  const cos = Math.cos(placement.tilt);
  const sin = Math.sin(placement.tilt);
  return points.map((p) => ({ x: placement.x + p.x * cos - p.y * sin, y: placement.y + p.x * sin + p.y * cos }));
}

/** The point of the blank's own frame that a placement puts at `at`. */
export function unplaced(at: Point, placement: Placement): Point {
  const cos = Math.cos(placement.tilt);
  const sin = Math.sin(placement.tilt);
  const x = at.x - placement.x;
  const y = at.y - placement.y;
  return { x: x * cos + y * sin, y: y * cos - x * sin };
}

/** A blank where it stands in an opening, with the upright boxes of both. */
export interface Standing {
  /** The blank's outlines; several where it is worn through. */
  readonly outlines: readonly (readonly Point[])[];
  readonly blankBox: Box;
  readonly openingBox: Box;
}

/** Where `blank` stands in `opening` at a placement. */
export function standing(
  opening: readonly (readonly Point[])[],
  blank: readonly (readonly Point[])[],
  placement: Placement,
): Standing {
  const outlines = blank.map((outline) => placed(outline, placement));
  return { outlines, blankBox: boxOf(outlines.flat()), openingBox: boxOf(opening.flat()) };
}

/** The middle of the upright box round some outlines. */
export function middleOfAll(outlines: readonly (readonly Point[])[]): Point {
  const { minX, maxX, minY, maxY } = boxOf(outlines.flat());
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
}
