import { boxOf, type Point } from '../geom/point.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';
import type { Placement } from './fit.ts';

/** The middle of a blank's box: tilting about it moves the outline least. */
export function pivotOf(ring: Ring): Point {
  const box = boxOf(ring);
  return { x: Math.round((box.minX + box.maxX) / 2), y: Math.round((box.minY + box.maxY) / 2) };
}

/** Greatest distance of a vertex from the pivot, nanometres: a turn by a moves no point further than this times a. */
export function reachOf(ring: Ring): number {
  const pivot = pivotOf(ring);
  return Math.max(...ring.map((p) => Math.hypot(p.x - pivot.x, p.y - pivot.y)));
}

/** The outline turned by `tilt` about its pivot, rounded to whole nanometres (0.71 nm at most). */
export function turnBlank(ring: Ring, tilt: number): Ring {
  if (tilt === 0) return ring;
  const { x: px, y: py } = pivotOf(ring);
  const c = Math.cos(tilt);
  const s = Math.sin(tilt);
  return asTrustedRing(
    ring.map(({ x, y }) => ({
      x: Math.round(px + c * (x - px) - s * (y - py)),
      y: Math.round(py + s * (x - px) + c * (y - py)),
    })),
  );
}

/** The placement, about the blank's own origin, of a blank that was turned about its pivot and then moved by (x, y). */
export function placementOfTurned(ring: Ring, tilt: number, { x, y }: Point): Placement {
  if (tilt === 0) return { x, y, tilt };
  const p = pivotOf(ring);
  const c = Math.cos(tilt);
  const s = Math.sin(tilt);
  return { x: x + p.x - (c * p.x - s * p.y), y: y + p.y - (s * p.x + c * p.y), tilt };
}
