import { type RefObject, useEffect, useRef, useState } from 'react';
import type { ShownPair } from '../panels/use-pair.ts';
import { useSession } from '../panels/use-store.ts';
import { gapMeter } from '../state/pair-sentence.ts';
import { blankUnderPointer } from '../tools/compare/blank-under-pointer.ts';
import { dragTo } from '../tools/compare/dragging-blank.ts';
import { type Gesture, type GestureStep, IDLE } from '../tools/compare/gesture.ts';
import { beginGesture } from '../tools/compare/idle.ts';
import { panTo } from '../tools/compare/panning.ts';
import { type DrawingView, type PixelPoint, wheelFactor, zoomAbout } from '../tools/drawing-view.ts';

interface CompareGestures {
  readonly frame: RefObject<HTMLElement | null>;
  readonly pair: ShownPair;
  readonly view: DrawingView | null;
  setView(view: DrawingView): void;
}

/** Lets the pointer drag the blank, move the sheet and zoom; returns what it is doing. */
export function useCompareGestures({ frame, pair, view, setView }: CompareGestures): Gesture['kind'] {
  const { hand, doors } = useSession();
  const gesture = useRef<Gesture>(IDLE);
  const [kind, setKind] = useState<Gesture['kind']>('idle');
  const spaceHeld = useSpaceHeld();
  // The listeners stand as long as the frame does; what they need to know is handed to them here after each drawing.
  const latest = useRef({ pair, view, setView, spaceHeld });
  useEffect(() => {
    latest.current = { pair, view, setView, spaceHeld };
  });
  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const enter = (next: Gesture) => {
      gesture.current = next;
      setKind(next.kind);
    };
    const onDown = (event: PointerEvent) => {
      const { pair: now, view: at, spaceHeld: space } = latest.current;
      if (!at || gesture.current.kind !== 'idle') return;
      const pixel = pixelOf(event, element);
      const onBlank = blankUnderPointer(now.entrant.ring, now.placement, at, pixel);
      enter(beginGesture({ at: pixel, button: event.button, spaceHeld: space.current, onBlank }, at, now.placement));
      if (gesture.current.kind !== 'idle') element.setPointerCapture(event.pointerId);
      if (event.button === 1) event.preventDefault();
    };
    const onMove = (event: PointerEvent) => {
      const { pair: now, view: at, setView: show } = latest.current;
      if (!at) return;
      const step = stepOf(gesture.current, pixelOf(event, element), at, now, doors);
      if (step?.placement) hand.setState({ placement: step.placement });
      if (step?.view) show(step.view);
    };
    const onUp = () => enter(IDLE);
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const { view: at, setView: show } = latest.current;
      if (at) show(zoomAbout(at, pixelOf(event, element), wheelFactor(event.deltaY, event.deltaMode)));
    };
    return listenAll(element, {
      pointerdown: onDown,
      pointermove: onMove,
      pointerup: onUp,
      pointercancel: onUp,
      wheel: onWheel,
    });
  }, [frame, hand, doors]);
  return kind;
}

type Listeners = {
  readonly [K in 'pointerdown' | 'pointermove' | 'pointerup' | 'pointercancel' | 'wheel']: (
    event: HTMLElementEventMap[K],
  ) => void;
};

/** Adds the listeners, able to prevent the browser's own scrolling; returns how to take them off. */
function listenAll(element: HTMLElement, listeners: Listeners): () => void {
  const entries = Object.entries(listeners) as [string, EventListener][];
  for (const [name, listener] of entries) element.addEventListener(name, listener, { passive: false });
  return () => {
    for (const [name, listener] of entries) element.removeEventListener(name, listener);
  };
}

function stepOf(
  gesture: Gesture,
  at: PixelPoint,
  view: DrawingView,
  pair: ShownPair,
  doors: Parameters<typeof gapMeter>[0],
): GestureStep | null {
  if (gesture.kind === 'panning') return panTo(gesture, at);
  if (gesture.kind === 'dragging-blank')
    return dragTo(
      gesture,
      at,
      view,
      { placement: pair.placement, free: pair.explanation.gap >= 0 },
      gapMeter(doors, pair.entrant, pair.opening),
    );
  return null;
}

function pixelOf(event: MouseEvent, element: HTMLElement): PixelPoint {
  const box = element.getBoundingClientRect();
  return { px: event.clientX - box.left, py: event.clientY - box.top };
}

/** A ref that is true while the space bar is down. */
function useSpaceHeld(): RefObject<boolean> {
  const held = useRef(false);
  useEffect(() => {
    const follow = (event: KeyboardEvent) => {
      if (event.key === ' ') held.current = event.type === 'keydown';
    };
    const letGo = () => {
      held.current = false;
    };
    addEventListener('keydown', follow);
    addEventListener('keyup', follow);
    addEventListener('blur', letGo);
    return () => {
      removeEventListener('blur', letGo);
      removeEventListener('keydown', follow);
      removeEventListener('keyup', follow);
    };
  }, []);
  return held;
}
