import type { Collision } from '../fit/fit.ts';
import type { Point } from '../geom/point.ts';
import { pointInside } from '../profile/point-inside.ts';

/** Where a ring is drawn round a collision, nanometres: at a ward not beside it, where the wall bites as well. */
export function clashPlace({ region, side, ward }: Collision): Point {
  const { outer } = region[0];
  const inside = pointInside(outer);
  if (!ward || (side !== 'left' && side !== 'right')) return inside;
  const xs = outer.map(({ x }) => x);
  const half = (Math.min(...xs) + Math.max(...xs)) / 2;
  const reaches = ({ x }: Point) => (side === 'left' ? x >= half : x <= half);
  const tip = outer.filter(reaches);
  if (reaches(inside) || tip.length === 0) return inside;
  const mean = (of: (p: Point) => number) => tip.reduce((sum, p) => sum + of(p), 0) / tip.length;
  return { x: mean(({ x }) => x), y: mean(({ y }) => y) };
}
