import type { PixelPoint } from '../tools/drawing-view.ts';

/** Where the pointer is, in pixels from the upper left corner of an element. */
export function pixelUnder(event: MouseEvent, element: HTMLElement): PixelPoint {
  const box = element.getBoundingClientRect();
  return { px: event.clientX - box.left, py: event.clientY - box.top };
}
