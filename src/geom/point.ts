/** A place or a displacement in the plane: x right, y up, in nanometres. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The smallest upright rectangle round something, in nanometres. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Nanometres in a millimetre. */
export const NM_PER_MM = 1e6;

/** Nanometres in an inch (exactly 25.4 mm). */
export const NM_PER_INCH = 25.4e6;

/** Nanometres in a micrometre. */
export const NM_PER_UM = 1e3;

/**
 * Largest coordinate, in nanometres either side of zero, that the core accepts (about 47 mm).
 * Up to here clipper-lib works in plain doubles and a product of two coordinate differences is exact.
 */
export const MAX_COORDINATE = 47_453_131;

/** The smallest upright rectangle round `points`; `points` must not be empty. */
export function boxOf(points: readonly Point[]): Box {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const { x, y } of points) {
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** `points` moved by `by`, in the same order. */
export function translatePoints(points: readonly Point[], by: Point): Point[] {
  return points.map((p) => ({ x: p.x + by.x, y: p.y + by.y }));
}
