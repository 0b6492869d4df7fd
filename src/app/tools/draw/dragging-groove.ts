import type { Units } from '../../../family/length-text.ts';
import { NM_PER_INCH, NM_PER_MM, type Point } from '../../../geom/point.ts';
import { setBladeSize, setGroove, withGroove } from '../../../profile/edit-milled.ts';
import type { Milled } from '../../../profile/profile.ts';
import { type DrawingView, type PixelPoint, toDrawing, toPixels } from '../drawing-view.ts';
import type { MillHandle, MillPart } from './groove-under-pointer.ts';

/** A handle of a milled blade is held: the blade as it was, and how far from the handle it was taken, in pixels. */
export interface DraggingGroove {
  readonly kind: 'dragging-groove';
  readonly handle: MillHandle;
  readonly base: Milled;
  readonly grip: PixelPoint;
}

/** A dragged size rests on whole steps: a hundredth of a millimetre or half a thou; a tenth of that where fine. */
const STEP = { mm: NM_PER_MM / 100, in: NM_PER_INCH / 2000 } as const;

/** The step that sizes rest on, nanometres. */
export function millStep(units: Units, fine: boolean): number {
  return fine ? STEP[units] / 10 : STEP[units];
}

/** Takes hold of a handle; the hand keeps its distance from it. */
export function holdGroove(handle: MillHandle, base: Milled, view: DrawingView, at: PixelPoint): DraggingGroove {
  const { px, py } = toPixels(view, handle.at);
  return { kind: 'dragging-groove', handle, base, grip: { px: at.px - px, py: at.py - py } };
}

/**
 * The blade as the hand wants it. It may not be sound: checkMilled says so.
 *
 * @check tests/unit/app/mill-editing.test.ts
 */
export function dragGrooveTo(
  { handle, base, grip }: DraggingGroove,
  at: PixelPoint,
  view: DrawingView,
  units: Units,
  fine: boolean,
): Milled {
  const wanted = toDrawing(view, { px: at.px - grip.px, py: at.py - grip.py });
  return partMovedTo(base, handle, wanted, millStep(units, fine));
}

/** The blade with one handle at another place; the size it stands for is a whole number of steps. */
function partMovedTo(base: Milled, { part, groove }: MillHandle, wanted: Point, step: number): Milled {
  const whole = (nm: number) => Math.round(Math.round(nm / step) * step) + 0;
  if (groove === null) return bladeTo(base, part, wanted, whole, step);
  const held = base.grooves[groove];
  const { side, bottom, width } = held;
  const within = (nm: number, least: number, most: number) => Math.min(most, Math.max(least, nm));
  if (part === 'root') {
    const depth = whole(side === 'left' ? wanted.x : base.thickness - wanted.x);
    return setGroove(base, groove, 'depth', Math.max(step, depth));
  }
  // A groove that is moved as a whole stays a groove: it stops a step before the ends of the blade.
  if (part === 'place')
    return setGroove(base, groove, 'bottom', within(whole(wanted.y - width / 2), step, base.height - width - step));
  const top = bottom + width;
  if (part === 'low') {
    const low = within(whole(wanted.y), 0, top - step);
    return withGroove(base, groove, { ...held, bottom: low, width: top - low });
  }
  const high = within(whole(wanted.y), bottom + step, base.height);
  return withGroove(base, groove, { ...held, width: high - bottom });
}

function bladeTo(base: Milled, part: MillPart, wanted: Point, whole: (nm: number) => number, step: number): Milled {
  if (part === 'thickness') return setBladeSize(base, 'thickness', Math.max(step, whole(wanted.x)));
  if (part === 'height') return setBladeSize(base, 'height', Math.max(step, whole(wanted.y)));
  return setBladeSize(base, 'backRadius', Math.max(0, whole(wanted.y / (1 - Math.SQRT1_2))));
}

/** The handle moved by key presses: its size changes by so many steps. */
export function nudgePart(base: Milled, handle: MillHandle, steps: number, step: number): Milled {
  const by = steps * step;
  const { x, y } = handle.at;
  return partMovedTo(base, handle, handle.along === 'x' ? { x: x + by, y } : { x, y: y + by }, step);
}
