import type { Point } from '../geom/point.ts';

/** Points turned about the origin, counter-clockwise, radians; not rounded. */
export function turnedAbout(points: readonly Point[], angle: number): readonly Point[] {
  if (angle === 0) return points;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return points.map(({ x, y }) => ({ x: c * x - s * y, y: s * x + c * y }));
}
