import type { Point } from '../../../geom/point.ts';
import { freeStretches } from '../../../profile/edit-milled.ts';
import { reachesBack, reachesTop } from '../../../profile/mill-corners.ts';
import type { Groove, Milled } from '../../../profile/profile.ts';
import { type DrawingView, type PixelPoint, toPixels } from '../drawing-view.ts';

/** What of a milled blade a handle moves: a groove as a whole, an edge of it, its root; a size of the blade. */
export type MillPart = 'place' | 'low' | 'high' | 'root' | 'thickness' | 'height' | 'backRadius';

/** A handle of a milled blade, in the blade's frame; `groove` is its place in the list, null for the blade itself. */
export interface MillHandle {
  readonly part: MillPart;
  readonly groove: number | null;
  readonly at: Point;
  /** The direction that it moves along. */
  readonly along: 'x' | 'y';
}

/** How near a press must be, in pixels. */
const REACH_PX = 13;

/** Every handle of a blade: of each groove its place, its edges and its root, and the sizes of the blade. */
export function millHandles(milled: Milled): MillHandle[] {
  const grooves = milled.grooves.flatMap((groove, i) => grooveHandles(milled, groove, i));
  return [...grooves, ...bladeHandles(milled)];
}

function grooveHandles({ thickness, height }: Milled, groove: Groove, index: number): MillHandle[] {
  const { side, bottom, width, depth } = groove;
  const across = (inward: number) => (side === 'left' ? inward : thickness - inward);
  const handle = (part: MillPart, inward: number, y: number, along: 'x' | 'y'): MillHandle => ({
    part,
    groove: index,
    at: { x: across(inward), y },
    along,
  });
  const middle = bottom + width / 2;
  const [atBack, atTop] = [reachesBack(groove), reachesTop(groove, height)];
  return [
    handle('root', depth, middle, 'x'),
    ...(atBack || atTop ? [] : [handle('place', 0, middle, 'y')]),
    ...(atBack ? [] : [handle('low', 0, bottom, 'y')]),
    ...(atTop ? [] : [handle('high', 0, bottom + width, 'y')]),
  ];
}

function bladeHandles(milled: Milled): MillHandle[] {
  const { thickness, height, backRadius } = milled;
  const free = freeStretches(milled, 'right').sort((a, b) => b.to - b.from - (a.to - a.from))[0];
  const arc = backRadius * (1 - Math.SQRT1_2);
  const step = milled.grooves.find((g) => g.side === 'left' && reachesBack(g))?.depth ?? 0;
  return [
    { part: 'height', groove: null, at: { x: thickness / 2, y: height }, along: 'y' },
    { part: 'backRadius', groove: null, at: { x: step + arc, y: arc }, along: 'y' },
    ...(free
      ? [{ part: 'thickness', groove: null, at: { x: thickness, y: (free.from + free.to) / 2 }, along: 'x' } as const]
      : []),
  ];
}

/**
 * The handle within reach of the pointer, the nearest one; of those nearly as near, one of the chosen groove.
 *
 * @check tests/unit/app/mill-editing.test.ts
 */
export function grooveUnderPointer(
  milled: Milled,
  chosen: number | null,
  view: DrawingView,
  at: PixelPoint,
): MillHandle | null {
  let best: MillHandle | null = null;
  let least: number = REACH_PX;
  for (const handle of millHandles(milled)) {
    const { px, py } = toPixels(view, handle.at);
    const far = Math.hypot(px - at.px, py - at.py) - (handle.groove !== null && handle.groove === chosen ? 4 : 0);
    if (far < least) [best, least] = [handle, far];
  }
  return best;
}
