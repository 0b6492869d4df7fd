import type { Point } from '../../geom/point.ts';
import { type CanvasSize, type DrawingView, toPixels } from '../tools/drawing-view.ts';
import type { Palette } from './palette.ts';

/** What every part of a canvas drawing needs: its size, its view, its colours. */
export interface DrawingSheet {
  readonly size: CanvasSize;
  readonly view: DrawingView;
  readonly palette: Palette;
}

/** An outline as Konva wants it: pixel coordinates one after the other. */
export function pixelsOf(points: readonly Point[], view: DrawingView): number[] {
  return points.flatMap((point) => {
    const { px, py } = toPixels(view, point);
    return [px, py];
  });
}
