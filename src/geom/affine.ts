import type { Point } from './point.ts';

/** An affine map of the plane, (x, y) -> (a x + c y + e, b x + d y + f); its lengths are those of the points it is for. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** The map that leaves everything where it is. */
export const IDENTITY: Affine = [1, 0, 0, 1, 0, 0];

/** The map that does `inner` first, then `outer`. */
export function compose(outer: Affine, inner: Affine): Affine {
  const [a, b, c, d, e, f] = outer;
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}

/** The map that moves everything by the same. */
export function translation(x: number, y: number): Affine {
  return [1, 0, 0, 1, x, y];
}

/** The map that stretches everything from the origin; below 0 it mirrors. */
export function scaling(x: number, y: number): Affine {
  return [x, 0, 0, y, 0, 0];
}

/**
 * The map that turns about a place. Right angles come out exact, so that a section turned by 90 degrees keeps its whole
 * numbers.
 *
 * @param angle degrees, from the x axis towards the y axis.
 */
export function rotation(angle: number, x = 0, y = 0): Affine {
  const quarters = angle / 90;
  const exact = Number.isInteger(quarters);
  const quarter = ((quarters % 4) + 4) % 4;
  const radians = (angle * Math.PI) / 180;
  const cos = exact ? [1, 0, -1, 0][quarter] : Math.cos(radians);
  const sin = exact ? [0, 1, 0, -1][quarter] : Math.sin(radians);
  return [cos, sin, -sin, cos, x - cos * x + sin * y, y - sin * x - cos * y];
}

/** The image of a place. */
export function mapPoint([a, b, c, d, e, f]: Affine, x: number, y: number): Point {
  return { x: a * x + c * y + e + 0, y: b * x + d * y + f + 0 };
}

/** The image of a displacement. */
export function mapVector([a, b, c, d]: Affine, x: number, y: number): Point {
  return { x: a * x + c * y, y: b * x + d * y };
}

/** Differences of scale below this keep a circle a circle: 1 nm on a radius of 10 mm. */
const SAME = 1e-7;

/** +1 where a map keeps the shape of everything, -1 where it also mirrors it, 0 where it turns circles into ellipses. */
export function similarity([a, b, c, d]: Affine): -1 | 0 | 1 {
  const size = Math.hypot(a, b);
  if (Math.abs(a - d) <= SAME * size && Math.abs(b + c) <= SAME * size) return 1;
  if (Math.abs(a + d) <= SAME * size && Math.abs(b - c) <= SAME * size) return -1;
  return 0;
}

/** Length of the long semi-axis of the ellipse that two conjugate half diameters span: the greater singular value. */
export function longSemiAxis(u: Point, v: Point): number {
  const sum = u.x * u.x + u.y * u.y + v.x * v.x + v.y * v.y;
  const area = u.x * v.y - u.y * v.x;
  return Math.sqrt((sum + Math.sqrt(Math.max(0, sum * sum - 4 * area * area))) / 2);
}
