/** How the diagram lies in its frame: scaled by `scale`, its top left corner at pixel (x, y). */
export interface DiagramView {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** A width and a height in pixels. */
export interface PixelSize {
  readonly width: number;
  readonly height: number;
}

/** A rectangle in the diagram's own pixels. */
export interface PixelBox extends PixelSize {
  readonly x: number;
  readonly y: number;
}

const LEAST_SCALE = 0.05;
const MOST_SCALE = 3;

/** A fitted diagram is not drawn larger than this: three sections need not fill a wall. */
const MOST_FITTED = 1.5;

/** Below this scale names are smaller than 12 pixels; then a diagram begins at it, at the top, and is moved about. */
export const LEAST_READABLE = 0.75;

/** Room between a fitted diagram and its frame, pixels. */
export const MARGIN = 14;

/** The view in which the whole diagram is seen, in the middle. */
export function fitDiagram(size: PixelSize, frame: PixelSize): DiagramView {
  const free = { width: Math.max(40, frame.width - 2 * MARGIN), height: Math.max(40, frame.height - 2 * MARGIN) };
  const wanted = Math.min(free.width / size.width, free.height / size.height, MOST_FITTED);
  const scale = Math.max(LEAST_SCALE, wanted);
  return { scale, x: (frame.width - scale * size.width) / 2, y: (frame.height - scale * size.height) / 2 };
}

/**
 * The view to begin with: the whole diagram where its labels can be read then, else as small as can be read, from the
 * highest tier down, as far down as brings a node into sight.
 *
 * @param node what is picked; null where nothing is.
 * @check tests/unit/app/tiers-diagram.test.ts
 */
export function firstView(size: PixelSize, frame: PixelSize, node: PixelBox | null): DiagramView {
  const whole = fitDiagram(size, frame);
  if (whole.scale >= LEAST_READABLE) return whole;
  const scale = LEAST_READABLE;
  const box = node ?? { x: 0, y: 0, width: size.width, height: 1 };
  const middle = frame.width / 2 - scale * (box.x + box.width / 2);
  const foot = frame.height - MARGIN - scale * (box.y + box.height);
  return {
    scale,
    x: within(middle, scale * size.width, frame.width),
    y: within(Math.min(MARGIN, foot), scale * size.height, frame.height),
  };
}

/** No empty room beside a diagram that is larger than its frame; a smaller one stands in the middle. */
function within(at: number, length: number, room: number): number {
  if (length + 2 * MARGIN <= room) return (room - length) / 2;
  return Math.min(MARGIN, Math.max(room - MARGIN - length, at));
}

/** The view `factor` times as large; what lies at pixel (px, py) of the frame stays there. */
export function zoomDiagram(view: DiagramView, px: number, py: number, factor: number): DiagramView {
  const scale = Math.max(LEAST_SCALE, Math.min(MOST_SCALE, view.scale * factor));
  const k = scale / view.scale;
  return { scale, x: px + (view.x - px) * k, y: py + (view.y - py) * k };
}

/** The view moved no further than needed for a node to be seen whole. */
export function revealBox(view: DiagramView, box: PixelBox, frame: PixelSize): DiagramView {
  const { scale } = view;
  const dx = shift(view.x + scale * box.x, scale * box.width, frame.width);
  const dy = shift(view.y + scale * box.y, scale * box.height, frame.height);
  return Math.abs(dx) < 1 && Math.abs(dy) < 1 ? view : { scale, x: view.x + dx, y: view.y + dy };
}

function shift(from: number, length: number, room: number): number {
  if (from < MARGIN) return MARGIN - from;
  const over = from + length - (room - MARGIN);
  return over > 0 ? Math.max(-over, MARGIN - from) : 0;
}
