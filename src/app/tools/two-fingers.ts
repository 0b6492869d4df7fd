import { type DrawingView, type PixelPoint, panBy, zoomAbout } from './drawing-view.ts';

/** How fingers hold a drawing: the place between them and how far apart they are, in pixels; 1 for a single finger. */
export interface FingerHold {
  readonly middle: PixelPoint;
  readonly apart: number;
}

/**
 * How the first two of some fingers hold a drawing; null where there is none.
 *
 * @check tests/unit/app/drawing-view.test.ts
 */
export function holdOf([a, b = a]: readonly PixelPoint[]): FingerHold | null {
  if (!a) return null;
  return {
    middle: { px: (a.px + b.px) / 2, py: (a.py + b.py) / 2 },
    apart: Math.max(1, Math.hypot(a.px - b.px, a.py - b.py)),
  };
}

/** The view in which what lay between the fingers does so again, larger where they went apart. */
export function pinchTo(view: DrawingView, before: FingerHold, now: FingerHold): DrawingView {
  const zoomed = zoomAbout(view, before.middle, now.apart / before.apart);
  return panBy(zoomed, now.middle.px - before.middle.px, now.middle.py - before.middle.py);
}
