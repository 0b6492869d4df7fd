import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import type { Profile } from '../../profile/profile.ts';
import { useSession } from '../panels/use-store.ts';
import { giveUpOutline, insertVertex, verticesInHand } from '../state/draw-editing.ts';
import type { Session } from '../state/session.ts';
import { insertPart } from '../tools/draw/insert-part.ts';
import { panTo } from '../tools/draw/panning.ts';
import { gridStep } from '../tools/draw/snap-targets.ts';
import { underPointer } from '../tools/draw/under-pointer.ts';
import { isTwoFingers, wheelView } from '../tools/draw/wheel.ts';
import type { DrawingView, PixelPoint } from '../tools/drawing-view.ts';
import {
  EMPTY_HAND,
  type HandKeys,
  type HandSheet,
  type HandShown,
  moveHand,
  pressHand,
  releaseHand,
} from './draw-hand.ts';
import { useSpaceHeld } from './use-space-held.ts';

interface DrawGestures {
  readonly frame: RefObject<HTMLElement | null>;
  readonly profile: Profile;
  readonly sheet: HandSheet | null;
  setView(view: DrawingView): void;
  /** Tells in words what a gesture has done. */
  tell(words: string): void;
  /** The pointer is at work: a cross moved by keys is put away. */
  onPointer(): void;
}

/** What the pointer does on the sheet, and the way to give it up. */
export interface DrawHand extends HandShown {
  /** Gives up what is held; returns whether something was. */
  giveUp(): boolean;
}

/** Two fingers on a pad count as such for so long after their last clear sign, milliseconds. */
const FINGERS_MS = 250;

/** Lets the pointer choose, drag, bow and add, draw with the pen, move the sheet and zoom. */
export function useDrawGestures(given: DrawGestures): DrawHand {
  const { frame } = given;
  const session = useSession();
  const [shown, setShown] = useState<HandShown>(EMPTY_HAND);
  const now = useRef<HandShown>(EMPTY_HAND);
  const spaceHeld = useSpaceHeld();
  // The listeners stand as long as the frame does; what they need to know is handed to them here after each drawing.
  const latest = useRef(given);
  useEffect(() => {
    latest.current = given;
  });
  const show = useCallback((next: HandShown) => {
    now.current = next;
    setShown(next);
  }, []);
  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    let fingersUntil = 0;
    const onDown = (event: PointerEvent) => {
      const { sheet, onPointer } = latest.current;
      if (!sheet || now.current.gesture.kind !== 'idle') return;
      onPointer();
      const press = { at: pixelOf(event, element), button: event.button, spaceHeld: spaceHeld.current };
      const gesture = pressHand(session, sheet, { ...press, shift: event.shiftKey, alt: event.altKey }, keysOf(event));
      if (gesture.kind !== 'idle') element.setPointerCapture(event.pointerId);
      if (event.button === 1) event.preventDefault();
      show({ ...now.current, gesture });
    };
    const onMove = (event: PointerEvent) => {
      const { sheet, setView, onPointer } = latest.current;
      const { gesture } = now.current;
      const at = pixelOf(event, element);
      if (!sheet) return;
      if (gesture.kind === 'panning') return setView(panTo(gesture, at));
      onPointer();
      show(moveHand(session, sheet, gesture, at, keysOf(event)));
    };
    const onUp = () => {
      const { gesture } = now.current;
      if (gesture.kind === 'idle') return;
      latest.current.tell(releaseHand(session, gesture, now.current));
      show(EMPTY_HAND);
    };
    const onCancel = () => {
      giveUpOutline(session);
      show(EMPTY_HAND);
    };
    const onLeave = () => {
      if (now.current.gesture.kind === 'idle') show(EMPTY_HAND);
    };
    const onDouble = (event: MouseEvent) => {
      const { sheet, tell } = latest.current;
      if (sheet && addVertexAt(session, sheet.view, pixelOf(event, element))) tell('A vertex was added.');
    };
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const { sheet, setView } = latest.current;
      if (!sheet) return;
      const { deltaX, deltaY, deltaMode } = event;
      const turn = { deltaX, deltaY, deltaMode, ctrl: event.ctrlKey || event.metaKey, shift: event.shiftKey };
      if (isTwoFingers(turn)) fingersUntil = event.timeStamp + FINGERS_MS;
      setView(wheelView(sheet.view, turn, pixelOf(event, element), event.timeStamp < fingersUntil));
    };
    return listenAll(element, {
      pointerdown: onDown,
      pointermove: onMove,
      pointerup: onUp,
      pointercancel: onCancel,
      pointerleave: onLeave,
      dblclick: onDouble,
      wheel: onWheel,
    });
  }, [frame, session, show, spaceHeld]);
  const giveUp = useCallback(() => {
    const held = now.current.gesture.kind !== 'idle';
    const given = giveUpOutline(session);
    show(EMPTY_HAND);
    return held || given;
  }, [session, show]);
  return { ...shown, giveUp };
}

/** A double click on an edge adds a vertex there; returns whether one was added. */
function addVertexAt(session: Session, view: DrawingView, at: PixelPoint): boolean {
  const { tool, form, snap } = session.draw.getState();
  if (tool === 'pen' || form === 'mill') return false;
  const vertices = verticesInHand(session);
  const under = underPointer(vertices, [], view, at);
  if (under.kind === 'bulge') return insertVertex(session, under.edge);
  if (under.kind !== 'edge') return false;
  const step = gridStep(snap, session.settings.getState().units);
  return insertVertex(session, under.edge, insertPart(vertices, under.edge, under.at, step));
}

function keysOf({ shiftKey, ctrlKey, metaKey, altKey }: MouseEvent): HandKeys {
  return { shift: shiftKey, free: ctrlKey || metaKey || altKey };
}

function pixelOf(event: MouseEvent, element: HTMLElement): PixelPoint {
  const box = element.getBoundingClientRect();
  return { px: event.clientX - box.left, py: event.clientY - box.top };
}

type Listened = 'pointerdown' | 'pointermove' | 'pointerup' | 'pointercancel' | 'pointerleave' | 'dblclick' | 'wheel';
type Listeners = { readonly [K in Listened]: (event: HTMLElementEventMap[K]) => void };

/** Adds the listeners, able to prevent the browser's own scrolling; returns how to take them off. */
function listenAll(element: HTMLElement, listeners: Listeners): () => void {
  const entries = Object.entries(listeners) as [string, EventListener][];
  for (const [name, listener] of entries) element.addEventListener(name, listener, { passive: false });
  return () => {
    for (const [name, listener] of entries) element.removeEventListener(name, listener);
  };
}
