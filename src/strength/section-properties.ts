import type { Point } from '../geom/point.ts';
import type { SectionEdge, SectionOutline } from './section-outline.ts';

/** Area, centroid and second moments of a section; millimetres, the centroid from the outline's own origin. */
export interface SectionProperties {
  readonly area: number;
  /** Length of the outline, mm. */
  readonly length: number;
  readonly centroid: Point;
  /** About the centroid: the integrals of y^2, x^2 and x y, mm^4. */
  readonly ix: number;
  readonly iy: number;
  readonly ixy: number;
  /** Least and greatest second moment of all axes through the centroid, mm^4. */
  readonly weakest: number;
  readonly strongest: number;
  /** Direction of the axis of the least one, radians from x, from -pi/2 to pi/2. */
  readonly weakAxis: number;
  /** Least second moment over the outline's greatest distance from its axis, mm^3. */
  readonly weakModulus: number;
}

/** Places and weights of the five-point Gauss rule on -1 to 1, exact to degree 9. */
const GAUSS: readonly (readonly [number, number])[] = [
  [0, 0.5688888888888889],
  [-0.5384693101056831, 0.47862867049936647],
  [0.5384693101056831, 0.47862867049936647],
  [-0.906179845938664, 0.23692688505618908],
  [0.906179845938664, 0.23692688505618908],
];

/** Longest part of an arc that one rule is used on, radians. */
const ARC_PART = Math.PI / 16;

/**
 * The properties of a section by integrals along its outline.
 *
 * @returns millimetres.
 * @accuracy about twelve digits, arcs included: the rule is exact for straight edges, and off by less than rounding for the
 *   short parts of arcs.
 * @source Green's theorem; C. Steger, "On the calculation of arbitrary moments of polygons", 1996 (from memory); Gauss's
 *   five-point rule, any handbook.
 * @check tests/outside/section-properties.test.ts
 */
export function sectionProperties(outline: SectionOutline): SectionProperties {
  const [a, sx, sy, xx, yy, xy, length] = contourSums(outline);
  const centroid = { x: sx / a, y: sy / a };
  const ix = yy - a * centroid.y ** 2;
  const iy = xx - a * centroid.x ** 2;
  const ixy = xy - a * centroid.x * centroid.y;
  const [mean, half] = [(ix + iy) / 2, Math.hypot((ix - iy) / 2, ixy)];
  const weakAxis = directionOfLeast(ix, iy, ixy);
  const weakest = mean - half;
  const reach = furthestFromAxis(outline, centroid, weakAxis);
  return {
    ...{ area: a, length, centroid, ix, iy, ixy, weakest, strongest: mean + half, weakAxis },
    weakModulus: weakest / reach,
  };
}

/** The direction of the axis whose second moment is least: I(t) = mean + (Ix - Iy)/2 cos 2t - Ixy sin 2t. */
function directionOfLeast(ix: number, iy: number, ixy: number): number {
  return Math.atan2(ixy, (iy - ix) / 2) / 2;
}

/** The integrals of 1, x, y, x^2, y^2 and x y over the section, and the length of its outline. */
function contourSums({ edges }: SectionOutline): number[] {
  const sums = [0, 0, 0, 0, 0, 0, 0];
  for (const edge of edges)
    alongEdge(edge, (x, y, dx, dy) => {
      sums[0] += (x * dy - y * dx) / 2;
      sums[1] += (x * x * dy) / 2;
      sums[2] -= (y * y * dx) / 2;
      sums[3] += (x * x * x * dy) / 3;
      sums[4] -= (y * y * y * dx) / 3;
      sums[5] += (x * x * y * dy - x * y * y * dx) / 4;
      sums[6] += Math.hypot(dx, dy);
    });
  return sums;
}

/** Visits places along an edge with the weighted steps of Gauss's rule. */
function alongEdge(edge: SectionEdge, visit: (x: number, y: number, dx: number, dy: number) => void): void {
  const { from, to, arc } = edge;
  if (!arc) {
    const [ux, uy] = [(to.x - from.x) / 2, (to.y - from.y) / 2];
    const [mx, my] = [(to.x + from.x) / 2, (to.y + from.y) / 2];
    for (const [t, w] of GAUSS) visit(mx + t * ux, my + t * uy, w * ux, w * uy);
    return;
  }
  const { centre, radius, start, sweep } = arc;
  const parts = Math.ceil(Math.abs(sweep) / ARC_PART);
  const half = sweep / parts / 2;
  for (let k = 0; k < parts; k++)
    for (const [t, w] of GAUSS) {
      const angle = start + half * (2 * k + 1 + t);
      const [c, s] = [radius * Math.cos(angle), radius * Math.sin(angle)];
      visit(centre.x + c, centre.y + s, -s * w * half, c * w * half);
    }
}

/** The outline's greatest distance from an axis through a point; at an arc, also where it runs along the axis. */
function furthestFromAxis({ edges }: SectionOutline, through: Point, direction: number): number {
  const normal = { x: -Math.sin(direction), y: Math.cos(direction) };
  const off = (p: Point): number => Math.abs((p.x - through.x) * normal.x + (p.y - through.y) * normal.y);
  return Math.max(...edges.map((edge) => Math.max(off(edge.from), bulgeReach(edge, direction, off))));
}

/** The greatest distance at those places of an arc whose tangent has the axis's direction; 0 where there is none. */
function bulgeReach({ arc }: SectionEdge, direction: number, off: (p: Point) => number): number {
  if (!arc) return 0;
  const { centre, radius, start, sweep } = arc;
  const reach = [direction + Math.PI / 2, direction - Math.PI / 2].map((angle) => {
    const ahead = ((((angle - start) * Math.sign(sweep)) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    if (ahead > Math.abs(sweep)) return 0;
    return off({ x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) });
  });
  return Math.max(...reach);
}
