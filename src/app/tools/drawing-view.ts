import type { Box, Point } from '../../geom/point.ts';

/**
 * How a drawing in nanometres (y up) lies on a canvas in pixels (y down): `scale` pixels a nanometre, with
 * the drawing's origin at pixel (x, y).
 */
export interface DrawingView {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** A place on the canvas, in CSS pixels from its top left corner. */
export interface PixelPoint {
  readonly px: number;
  readonly py: number;
}

/** The size of a canvas in CSS pixels, with the part at each edge that a fitted drawing leaves free. */
export interface CanvasSize {
  readonly width: number;
  readonly height: number;
}

/** Smallest and largest scale that zooming goes to: 5 and 20,000 pixels a millimetre. */
const SCALE_LIMITS = { least: 5e-6, most: 2e-2 } as const;

/** Where a point of the drawing lies on the canvas. */
export function toPixels(view: DrawingView, point: Point): PixelPoint {
  return { px: view.x + point.x * view.scale, py: view.y - point.y * view.scale };
}

/** Which point of the drawing lies under a pixel. */
export function toDrawing(view: DrawingView, pixel: PixelPoint): Point {
  return { x: (pixel.px - view.x) / view.scale, y: (view.y - pixel.py) / view.scale };
}

/** The view in which `box` fills a canvas, in the middle, with `margin` pixels free at every edge. */
export function fitBox(box: Box, size: CanvasSize, margin: number): DrawingView {
  const free = { width: Math.max(40, size.width - 2 * margin), height: Math.max(40, size.height - 2 * margin) };
  const scale = clampScale(Math.min(free.width / (box.maxX - box.minX), free.height / (box.maxY - box.minY)));
  return {
    scale,
    x: size.width / 2 - (scale * (box.minX + box.maxX)) / 2,
    y: size.height / 2 + (scale * (box.minY + box.maxY)) / 2,
  };
}

/** The view `factor` times as large, with the drawing's point under `pixel` staying where it is. */
export function zoomAbout(view: DrawingView, pixel: PixelPoint, factor: number): DrawingView {
  const scale = clampScale(view.scale * factor);
  const k = scale / view.scale;
  return { scale, x: pixel.px + (view.x - pixel.px) * k, y: pixel.py + (view.y - pixel.py) * k };
}

/** The view moved over the canvas by so many pixels. */
export function panBy(view: DrawingView, dx: number, dy: number): DrawingView {
  return { scale: view.scale, x: view.x + dx, y: view.y + dy };
}

/** How much one wheel event zooms; a notch of a mouse wheel is about a fifth. */
export function wheelFactor(deltaY: number, deltaMode: number): number {
  const pixels = deltaMode === 1 ? deltaY * 33 : deltaY;
  return Math.exp(-Math.max(-300, Math.min(300, pixels)) * 0.0018);
}

function clampScale(scale: number): number {
  return Math.max(SCALE_LIMITS.least, Math.min(SCALE_LIMITS.most, scale));
}
