import type { Point } from '../../../geom/point.ts';
import { type DrawingView, type PixelPoint, toDrawing } from '../drawing-view.ts';
import { goOn, type PickingBox } from './gesture.ts';

/** The box goes from where it was begun to where the pointer is. */
export function pickTo(gesture: PickingBox, at: PixelPoint, view: DrawingView): PickingBox {
  return { ...goOn(gesture, at), to: toDrawing(view, at) };
}

/** Numbers of the vertices that a box chooses: those in it, with those that were chosen before it and stay so. */
export function pickedBy({ corner, to, kept, moved }: PickingBox, vertices: readonly Point[]): number[] {
  const inside = (p: Point) =>
    p.x >= Math.min(corner.x, to.x) &&
    p.x <= Math.max(corner.x, to.x) &&
    p.y >= Math.min(corner.y, to.y) &&
    p.y <= Math.max(corner.y, to.y);
  const within = moved ? vertices.flatMap((p, i) => (inside(p) ? [i] : [])) : [];
  return [...new Set([...kept, ...within])].sort((a, b) => a - b);
}
