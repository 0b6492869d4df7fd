import { type PointerEvent, useRef } from 'react';
import type { Placement } from '../../../fit/fit.ts';
import { type DrawingView, type PixelPoint, toDrawing, toPixels } from '../../tools/drawing-view.ts';
import { useSession } from '../use-store.ts';

/** A press this near to the dot, in pixels of the map, takes it where it was touched; elsewhere the dot jumps there. */
const TAKES_DOT = 16;

/**
 * Pointer handlers by which the blank is moved over the map of its placements.
 *
 * @param side of the map in the pixels of its view.
 */
export function useMapDrag(view: DrawingView, side: number, placement: Placement) {
  const { hand } = useSession();
  const held = useRef<{ readonly grip: PixelPoint; readonly view: DrawingView; readonly tilt: number } | null>(null);
  const move = (event: PointerEvent<HTMLElement>) => {
    if (!held.current) return;
    const { grip, view: on, tilt } = held.current;
    const at = pixelOf(event, side);
    const to = toDrawing(on, { px: at.px - grip.px, py: at.py - grip.py });
    hand.setState({ placement: { x: Math.round(to.x), y: Math.round(to.y), tilt } });
  };
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      const at = pixelOf(event, side);
      const dot = toPixels(view, placement);
      const grip = { px: at.px - dot.px, py: at.py - dot.py };
      const near = Math.hypot(grip.px, grip.py) <= TAKES_DOT;
      held.current = { grip: near ? grip : { px: 0, py: 0 }, view, tilt: placement.tilt };
      event.currentTarget.setPointerCapture(event.pointerId);
      if (!near) move(event);
    },
    onPointerMove: move,
    onPointerUp: () => {
      held.current = null;
    },
    onPointerCancel: () => {
      held.current = null;
    },
  };
}

function pixelOf(event: PointerEvent<HTMLElement>, side: number): PixelPoint {
  const box = event.currentTarget.getBoundingClientRect();
  return {
    px: ((event.clientX - box.left) / box.width) * side,
    py: ((event.clientY - box.top) / box.height) * side,
  };
}
