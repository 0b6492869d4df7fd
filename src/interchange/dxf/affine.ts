import type { Point } from '../../geom/point.ts';

/** A map of the plane that keeps straight lines straight: x' = a x + c y + e, y' = b x + d y + f. */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** The map that does `inner` first and `outer` then. */
export function compose(outer: Affine, inner: Affine): Affine {
  return {
    a: outer.a * inner.a + outer.c * inner.b,
    b: outer.b * inner.a + outer.d * inner.b,
    c: outer.a * inner.c + outer.c * inner.d,
    d: outer.b * inner.c + outer.d * inner.d,
    e: outer.a * inner.e + outer.c * inner.f + outer.e,
    f: outer.b * inner.e + outer.d * inner.f + outer.f,
  };
}

/** The map that moves everything by the same. */
export function translation(x: number, y: number): Affine {
  return { a: 1, b: 0, c: 0, d: 1, e: x, f: y };
}

/** The map that stretches everything from the origin; below 0 it mirrors. */
export function scaling(x: number, y: number): Affine {
  return { a: x, b: 0, c: 0, d: y, e: 0, f: 0 };
}

/** @param angle in degrees, to the left; quarter turns are exact. */
export function rotation(angle: number): Affine {
  const quarter = ((angle % 360) + 360) % 360;
  const exact = [0, 90, 180, 270].indexOf(quarter);
  const radians = (angle * Math.PI) / 180;
  const cos = exact < 0 ? Math.cos(radians) : [1, 0, -1, 0][exact];
  const sin = exact < 0 ? Math.sin(radians) : [0, 1, 0, -1][exact];
  return { a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 };
}

/** Where a map takes a point. */
export function applyTo(map: Affine, { x, y }: Point): Point {
  return { x: map.a * x + map.c * y + map.e, y: map.b * x + map.d * y + map.f };
}

/** The map of a direction: without its displacement. */
export function applyToVector(map: Affine, { x, y }: Point): Point {
  return { x: map.a * x + map.c * y, y: map.b * x + map.d * y };
}

/** Differences of scale below this keep a circle a circle: 1 nm on a radius of 10 mm. */
const SAME = 1e-7;

/** +1 where a map keeps the shape of everything, -1 where it also mirrors it, 0 where it turns circles into ellipses. */
export function similarity({ a, b, c, d }: Affine): -1 | 0 | 1 {
  const size = Math.hypot(a, b);
  if (Math.abs(a - d) <= SAME * size && Math.abs(b + c) <= SAME * size) return 1;
  if (Math.abs(a + d) <= SAME * size && Math.abs(b - c) <= SAME * size) return -1;
  return 0;
}
