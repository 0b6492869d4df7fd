import { type RefObject, useEffect, useRef, useState } from 'react';

/** The pointer's dot: where it is drawn, whether it is seen, and the ways to show it. */
export interface PointerDot {
  readonly dot: RefObject<HTMLDivElement | null>;
  readonly seen: boolean;
  /**
   * The key of the dot went down or up: held it shows the dot while it is down, tapped it shows it until the next tap.
   *
   * @param at when the hand did it, milliseconds; on a busy page it is heard later.
   */
  press(at: number): void;
  release(at: number): void;
}

/** A key that is down for longer than this is held, not tapped, in milliseconds. */
const TAP = 350;
/** A mouse button that is down for this long, or moves this far, points; else it was a click. */
const HOLD = 250;
const FAR = 8;

/**
 * A big soft dot that follows the mouse, as a light pointer would. It moves with the hand alone and never by itself, so it is
 * the same for those who asked for less motion.
 *
 * @param onClick a press of the button that pointed at nothing, with its place.
 */
export function usePointerDot(area: RefObject<HTMLElement | null>, onClick: (x: number) => void): PointerDot {
  const dot = useRef<HTMLDivElement>(null);
  const [byKey, setByKey] = useState(false);
  const [byButton, setByButton] = useState(false);
  const down = useRef<{ at: number; was: boolean } | null>(null);
  const click = useRef(onClick);
  useEffect(() => {
    click.current = onClick;
  });
  useEffect(() => {
    const shown = area.current;
    return shown ? followMouse(shown, dot, setByButton, (x) => click.current(x)) : undefined;
  }, [area]);
  const press = (at: number) => {
    if (down.current) return;
    down.current = { at, was: byKey };
    setByKey(true);
  };
  const release = (at: number) => {
    const { current } = down;
    down.current = null;
    if (current) setByKey(at - current.at <= TAP && !current.was);
  };
  return { dot, seen: byKey || byButton, press, release };
}

function followMouse(
  area: HTMLElement,
  dot: RefObject<HTMLDivElement | null>,
  setPointing: (pointing: boolean) => void,
  onClick: (x: number) => void,
): () => void {
  let from: { x: number; y: number } | null = null;
  let pointing = false;
  let timer = 0;
  const point = (now: boolean) => {
    pointing = now;
    setPointing(now);
  };
  const onMove = ({ clientX, clientY }: PointerEvent) => {
    if (dot.current) dot.current.style.transform = `translate(${clientX}px, ${clientY}px)`;
    if (from && !pointing && Math.hypot(clientX - from.x, clientY - from.y) > FAR) point(true);
  };
  const onDown = (event: PointerEvent) => {
    if (event.button !== 0 || (event.target instanceof Element && event.target.closest('button'))) return;
    // The focus stays where the keys are heard.
    event.preventDefault();
    from = { x: event.clientX, y: event.clientY };
    onMove(event);
    timer = window.setTimeout(() => point(true), HOLD);
  };
  const onUp = ({ clientX }: PointerEvent) => {
    clearTimeout(timer);
    const clicked = from !== null && !pointing;
    from = null;
    point(false);
    if (clicked) onClick(clientX);
  };
  const onCancel = () => {
    clearTimeout(timer);
    from = null;
    point(false);
  };
  area.addEventListener('pointermove', onMove);
  area.addEventListener('pointerdown', onDown);
  addEventListener('pointerup', onUp);
  addEventListener('pointercancel', onCancel);
  return () => {
    clearTimeout(timer);
    area.removeEventListener('pointermove', onMove);
    area.removeEventListener('pointerdown', onDown);
    removeEventListener('pointerup', onUp);
    removeEventListener('pointercancel', onCancel);
  };
}
