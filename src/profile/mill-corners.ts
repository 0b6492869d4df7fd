import type { Point } from '../geom/point.ts';
import type { Groove, Milled } from './profile.ts';
import type { Corner } from './round-corners.ts';

/** A corner of a milled blade before it is rounded, and the groove it belongs to (by its place in the list). */
export interface MillCorner extends Corner {
  /** Absent where the corner belongs to the blade itself. */
  readonly groove?: number;
}

/** A groove and its place in the description. */
interface NumberedGroove {
  readonly groove: Groove;
  readonly index: number;
}

/** Whether the groove runs out at the back of the blade, as a step. */
export function reachesBack(groove: Groove): boolean {
  return groove.bottom === 0;
}

/** Whether the groove runs out at the upper edge of the blade, as a step. */
export function reachesTop(groove: Groove, height: number): boolean {
  return groove.bottom + groove.width === height;
}

/** How much a groove narrows from its face to its root at one flank. */
export function flankRun(groove: Groove): number {
  return groove.depth * Math.tan(groove.flank);
}

/**
 * The corners of a milled blade with sharp edges, counter-clockwise from the left end of the back, each with the
 * radius it is to be given. Nanometres, not rounded.
 *
 * @check tests/unit/profile/mill-outline.test.ts
 */
export function millCorners(milled: Milled): MillCorner[] {
  const right = faceCorners(milled, 'right').map((c) => ({ ...c, at: { x: milled.thickness - c.at.x, y: c.at.y } }));
  const left = faceCorners(milled, 'left').reverse();
  const back = left.pop();
  return back ? [back, ...right, ...left] : right;
}

/** The corners of one face from the back to the upper edge; x is the depth below the face. */
function faceCorners(milled: Milled, side: Groove['side']): MillCorner[] {
  const { height, backRadius } = milled;
  const grooves = numbered(milled).filter((n) => n.groove.side === side);
  const first = grooves.find((n) => reachesBack(n.groove));
  const last = grooves.find((n) => reachesTop(n.groove, height));
  const back: MillCorner = { at: { x: first?.groove.depth ?? 0, y: 0 }, radius: backRadius };
  const top: MillCorner = { at: { x: last?.groove.depth ?? 0, y: height }, radius: 0 };
  return [back, ...grooves.flatMap((n) => grooveCorners(n, height)), top];
}

/** The grooves with their places, lowest first. */
function numbered(milled: Milled): NumberedGroove[] {
  return milled.grooves.map((groove, index) => ({ groove, index })).sort((a, b) => a.groove.bottom - b.groove.bottom);
}

/** Mouth, root, root, mouth of one groove from below; a step lacks the two of the side that runs out. */
function grooveCorners({ groove, index }: NumberedGroove, height: number): MillCorner[] {
  const { bottom, width, depth, rootRadius } = groove;
  const run = flankRun(groove);
  const corner = (at: Point, radius: number): MillCorner => ({ at, radius, groove: index });
  const lower = [corner({ x: 0, y: bottom }, 0), corner({ x: depth, y: bottom + run }, rootRadius)];
  const upper = [corner({ x: depth, y: bottom + width - run }, rootRadius), corner({ x: 0, y: bottom + width }, 0)];
  return [...(reachesBack(groove) ? [] : lower), ...(reachesTop(groove, height) ? [] : upper)];
}
