import { type RefObject, useEffect, useRef, useState } from 'react';
import type { Placement } from '../../../fit/fit.ts';
import {
  beginCorner,
  chooseCorner,
  finishCorner,
  giveUpCorner,
  moveCorner,
} from '../../panels/compare/corner-editing.ts';
import { shownCorners } from '../../panels/compare/corner-places.ts';
import { cornersOf } from '../../panels/compare/corner-state.ts';
import type { ShownPair } from '../../panels/use-pair.ts';
import { useSession } from '../../panels/use-store.ts';
import type { Session } from '../../state/session.ts';
import { blankUnderPointer } from '../../tools/compare/blank-under-pointer.ts';
import { cornerUnderPointer } from '../../tools/compare/corner-under-pointer.ts';
import { dragTo } from '../../tools/compare/dragging-blank.ts';
import { dragCornerTo, holdCorner } from '../../tools/compare/dragging-corner.ts';
import { type Gesture, type GestureStep, IDLE, type Press } from '../../tools/compare/gesture.ts';
import { beginGesture } from '../../tools/compare/idle.ts';
import { type DrawingView, type PixelPoint, wheelFactor, zoomAbout } from '../../tools/drawing-view.ts';
import { panTo } from '../../tools/panning.ts';
import { ofFirst } from '../first-pointer.ts';
import { pixelUnder } from '../pixel-under.ts';
import { listenToTwoFingers } from '../two-fingers.ts';
import { useSpaceHeld } from '../use-space-held.ts';

interface CompareGestures {
  readonly frame: RefObject<HTMLElement | null>;
  readonly pair: ShownPair;
  readonly view: DrawingView | null;
  setView(view: DrawingView): void;
  /** Called for every press, before it takes hold of anything. */
  onPress(): void;
}

/** Lets the pointer drag the blank or a corner, move the sheet and zoom; returns what it is doing. */
export function useCompareGestures({ frame, pair, view, setView, onPress }: CompareGestures): Gesture['kind'] {
  const session = useSession();
  const gesture = useRef<Gesture>(IDLE);
  const [kind, setKind] = useState<Gesture['kind']>('idle');
  const spaceHeld = useSpaceHeld();
  const latest = useLatest({ pair, view, setView, onPress, spaceHeld });
  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    let before: Placement | null = null;
    const enter = (next: Gesture) => {
      gesture.current = next;
      setKind(next.kind);
    };
    const onDown = (event: PointerEvent) => {
      const { pair: now, view: at, onPress: press, spaceHeld: space } = latest.current;
      if (!at || gesture.current.kind !== 'idle') return;
      press();
      before = session.hand.getState().placement;
      const pressed = { at: pixelUnder(event, element), button: event.button, spaceHeld: space.current };
      enter(takeCorner(session, pressed, at, now) ?? takeRest(pressed, at, now));
      if (gesture.current.kind !== 'idle') element.setPointerCapture(event.pointerId);
      if (event.button === 1) event.preventDefault();
    };
    const onMove = (event: PointerEvent) => {
      const { pair: now, view: at, setView: show } = latest.current;
      if (!at) return;
      const step = stepOf(gesture.current, pixelUnder(event, element), at, now, session);
      if (step?.placement) session.hand.setState({ placement: step.placement });
      if (step?.corner) moveCorner(session, step.corner);
      if (step?.view) show(step.view);
    };
    const onUp = () => {
      if (gesture.current.kind === 'dragging-corner') finishCorner(session);
      enter(IDLE);
    };
    const letGo = () => {
      if (!giveUpCorner(session) && isDragging(gesture.current)) session.hand.setState({ placement: before });
      enter(IDLE);
    };
    const pinched = () => ({ ...latest.current, isHolding: () => isDragging(gesture.current), letGo });
    const stopFingers = listenToTwoFingers(element, pinched);
    const stop = listenAll(element, {
      pointerdown: ofFirst(onDown),
      pointermove: ofFirst(onMove),
      pointerup: ofFirst(onUp),
      pointercancel: ofFirst(onUp),
      wheel: (event) => turnWheel(event, element, latest.current),
    });
    return () => {
      stopFingers();
      stop();
    };
  }, [frame, session, latest]);
  return kind;
}

type Known = Omit<CompareGestures, 'frame'> & { readonly spaceHeld: RefObject<boolean> };

/**
 * What the listeners need to know, which stand as long as the frame does: handed to them after each drawing. A view holds at
 * once: the next turn of the wheel, or the next press, may come before the drawing does.
 */
function useLatest(known: Known): RefObject<Known> {
  const latest = useRef(known);
  useEffect(() => {
    const setView = (view: DrawingView) => {
      latest.current = { ...latest.current, view };
      known.setView(view);
    };
    latest.current = { ...known, setView };
  });
  return latest;
}

const isDragging = ({ kind }: Gesture) => kind === 'dragging-blank' || kind === 'dragging-corner';

function turnWheel(
  event: WheelEvent,
  element: HTMLElement,
  { view, setView }: Pick<CompareGestures, 'view' | 'setView'>,
): void {
  event.preventDefault();
  if (view) setView(zoomAbout(view, pixelUnder(event, element), wheelFactor(event.deltaY, event.deltaMode)));
}

type Pressed = Omit<Press, 'onBlank'>;

/** Takes the corner under the pointer where corners are shown, and chooses it. */
function takeCorner(session: Session, { at, button, spaceHeld }: Pressed, view: DrawingView, pair: ShownPair) {
  const corners = shownCorners(pair, cornersOf(session).getState());
  if (!corners || button !== 0 || spaceHeld) return null;
  const index = cornerUnderPointer(corners.points, corners.chosen, view, at);
  if (index === null) return null;
  chooseCorner(session, index);
  beginCorner(session, pair);
  return holdCorner(index, corners.points[index], view, at);
}

function takeRest(pressed: Pressed, view: DrawingView, { shapes, placement }: ShownPair): Gesture {
  const onBlank = blankUnderPointer(shapes.entrant.flat(), placement, view, pressed.at);
  return beginGesture({ ...pressed, onBlank }, view, placement);
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
  session: Session,
): GestureStep | null {
  if (gesture.kind === 'panning') return { gesture, view: panTo(gesture, at) };
  if (gesture.kind === 'dragging-blank') {
    const { shapes, placement, explanation } = pair;
    const gapAt = (to: Placement) => session.doors.explainPlacement(shapes.opening, shapes.entrant, to).gap;
    return dragTo(gesture, at, view, { placement, free: explanation.gap >= 0 }, gapAt);
  }
  if (gesture.kind !== 'dragging-corner') return null;
  const { edit, part } = cornersOf(session).getState();
  return (
    edit && dragCornerTo(gesture, at, view, part === 'entrant' ? edit.held : null, session.settings.getState().units)
  );
}
