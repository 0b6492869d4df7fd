import { boxOf, type Point } from '../geom/point.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';
import type { Placement } from './fit.ts';

/** The middle of the box round the outlines: tilting about it moves them least. */
function pivotOf(rings: readonly Ring[]): Point {
  const box = boxOf(rings.flat());
  return { x: Math.round((box.minX + box.maxX) / 2), y: Math.round((box.minY + box.maxY) / 2) };
}

/** Greatest distance of a vertex from the pivot, nanometres: a turn by a moves no point further than this times a. */
export function reachOf(rings: readonly Ring[]): number {
  const pivot = pivotOf(rings);
  return Math.max(...rings.flat().map((p) => Math.hypot(p.x - pivot.x, p.y - pivot.y)));
}

/** The outlines turned by `tilt` about their common pivot, rounded to whole nanometres (0.71 nm at most). */
export function turnBlank(rings: readonly Ring[], tilt: number): readonly Ring[] {
  if (tilt === 0) return rings;
  const { x: px, y: py } = pivotOf(rings);
  const c = Math.cos(tilt);
  const s = Math.sin(tilt);
  const turned = ({ x, y }: Point): Point => ({
    x: Math.round(px + c * (x - px) - s * (y - py)),
    y: Math.round(py + s * (x - px) + c * (y - py)),
  });
  return rings.map((ring) => asTrustedRing(ring.map(turned)));
}

/** The placement, about the blank's own origin, of outlines that were turned about their pivot and then moved by (x, y). */
export function placementOfTurned(rings: readonly Ring[], tilt: number, { x, y }: Point): Placement {
  if (tilt === 0) return { x, y, tilt };
  const p = pivotOf(rings);
  const c = Math.cos(tilt);
  const s = Math.sin(tilt);
  return { x: x + p.x - (c * p.x - s * p.y), y: y + p.y - (s * p.x + c * p.y), tilt };
}
