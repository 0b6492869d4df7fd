import type { Point } from './point.ts';

/** Square of the distance from (x, y) to the segment from (ax, ay) to (bx, by). */
export function squaredDistance(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const ux = bx - ax;
  const uy = by - ay;
  const px = x - ax;
  const py = y - ay;
  const length2 = ux * ux + uy * uy;
  const along = ux * px + uy * py;
  if (along <= 0 || length2 === 0) return px * px + py * py;
  if (along >= length2) return (x - bx) * (x - bx) + (y - by) * (y - by);
  const across = ux * py - uy * px;
  return (across * across) / length2;
}

/** The point of the segment a-b that is nearest to p. */
export function nearestOnSegment(p: Point, a: Point, b: Point): Point {
  const ux = b.x - a.x;
  const uy = b.y - a.y;
  const length2 = ux * ux + uy * uy;
  const along = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * ux + (p.y - a.y) * uy) / length2));
  return { x: a.x + along * ux, y: a.y + along * uy };
}
