import type { Profile } from '../../../profile/profile.ts';
import {
  chooseVertices,
  chosenNow,
  endNudges,
  giveUpOutline,
  insertVertex,
  verticesInHand,
} from '../../state/draw/draw-editing.ts';
import { takeBackPenVertex } from '../../state/draw/pen-editing.ts';
import type { Session } from '../../state/session.ts';
import type { Gesture } from '../../tools/draw/gesture.ts';
import { insertPart } from '../../tools/draw/insert-part.ts';
import { gridStep } from '../../tools/draw/snap-targets.ts';
import { underPointer } from '../../tools/draw/under-pointer.ts';
import { isTwoFingers, wheelView } from '../../tools/draw/wheel.ts';
import type { DrawingView, PixelPoint } from '../../tools/drawing-view.ts';
import { type Panning, panTo } from '../../tools/panning.ts';
import { ofFirst } from '../first-pointer.ts';
import { pixelUnder } from '../pixel-under.ts';
import { listenToTwoFingers, type PinchedSheet } from '../two-fingers.ts';
import {
  EMPTY_HAND,
  type HandKeys,
  type HandSheet,
  type HandShown,
  moveHand,
  pressHand,
  releaseHand,
} from './draw-hand.ts';
import { SIDE_HANDS, type SideHand } from './side-hands.ts';

/** What the pointer on the sheet needs to know and may do, as it is at the moment. */
export interface SheetNow {
  readonly profile: Profile;
  /** Null until the frame has been laid out. */
  readonly sheet: HandSheet | null;
  readonly spaceHeld: boolean;
  setView(view: DrawingView): void;
  show(hand: HandShown): void;
  /** Tells in words what a gesture has done. */
  tell(words: string): void;
  /** The pointer is at work: a cross moved by keys is put away. */
  onPointer(): void;
}

/** Two fingers on a pad count as such for so long after their last clear sign, milliseconds. */
const FINGERS_MS = 250;

/** The pointer on the sheet of the Draw view: hears its events and leads the hand. */
export class SheetPointer {
  private hand: HandShown = EMPTY_HAND;
  private side: SideHand | null = null;
  private fingersUntil = 0;
  /** The vertices that were chosen before the press. */
  private chosenBefore: readonly number[] = [];

  constructor(
    private readonly session: Session,
    private readonly element: HTMLElement,
    private readonly now: () => SheetNow,
  ) {}

  /** Begins to hear; returns how to stop. */
  listen(): () => void {
    const listeners: [string, EventListener][] = [
      ['pointerdown', ofFirst((event) => this.press(event))],
      ['pointermove', ofFirst((event) => this.move(event))],
      ['pointerup', ofFirst(() => this.release())],
      ['pointercancel', ofFirst(() => this.giveUp())],
      ['pointerleave', ofFirst(() => this.leave())],
      ['dblclick', (event) => this.double(event as MouseEvent)],
      ['wheel', (event) => this.turn(event as WheelEvent)],
    ];
    // Not passive: the browser's own scrolling and zooming must be kept from the sheet.
    for (const [name, listener] of listeners) this.element.addEventListener(name, listener, { passive: false });
    const stopFingers = listenToTwoFingers(this.element, () => this.pinched());
    return () => {
      stopFingers();
      for (const [name, listener] of listeners) this.element.removeEventListener(name, listener);
    };
  }

  /** Gives up what is held; returns whether something was. */
  giveUp(): boolean {
    this.side = null;
    // Presses of keys that were taken stay; only what the pointer holds is given up.
    endNudges(this.session);
    if (SIDE_HANDS.some((hand) => hand.giveUp(this.session))) return true;
    const held = this.hand.gesture.kind !== 'idle';
    const edited = giveUpOutline(this.session);
    this.show(EMPTY_HAND);
    return held || edited;
  }

  private pinched(): PinchedSheet {
    const { sheet, setView } = this.now();
    const { kind } = this.hand.gesture;
    const isFree = kind === 'idle' || kind === 'panning' || kind === 'picking-box';
    return {
      view: sheet?.view ?? null,
      setView,
      isHolding: () => this.side !== null || !isFree,
      letGo: () => this.letGo(),
    };
  }

  /** Puts back what a press took; what was under way before it stays so. */
  private letGo(): void {
    endNudges(this.session);
    const { gesture } = this.hand;
    if (this.side) this.side.giveUp(this.session);
    else if (gesture.kind === 'pressing-pen' && !gesture.closing) takeBackPenVertex(this.session);
    else if (gesture.kind !== 'idle') {
      giveUpOutline(this.session);
      chooseVertices(this.session, this.chosenBefore);
    }
    this.side = null;
    this.show(EMPTY_HAND);
  }

  private show(hand: HandShown): void {
    this.hand = hand;
    this.now().show(hand);
  }

  private press(event: PointerEvent): void {
    const { sheet, profile, spaceHeld, onPointer } = this.now();
    if (!sheet || this.side || this.hand.gesture.kind !== 'idle') return;
    onPointer();
    this.chosenBefore = chosenNow(this.session);
    const { button, shiftKey: shift, altKey: alt } = event;
    const press = { at: pixelUnder(event, this.element), button, spaceHeld, shift, alt };
    if (button === 0 && !spaceHeld)
      this.side = SIDE_HANDS.find((hand) => hand.press(this.session, profile, sheet.view, press.at)) ?? null;
    const gesture = this.side ? EMPTY_HAND.gesture : pressHand(this.session, sheet, press, keysOf(event));
    if (this.side || gesture.kind !== 'idle') this.element.setPointerCapture(event.pointerId);
    if (button === 1) event.preventDefault();
    this.show({ ...this.hand, gesture });
  }

  private move(event: PointerEvent): void {
    const { sheet, profile, setView, onPointer } = this.now();
    const { gesture } = this.hand;
    const at = pixelUnder(event, this.element);
    if (!sheet) return;
    if (this.side) this.side.drag(this.session, sheet.view, at, event.altKey || event.shiftKey);
    else if (gesture.kind === 'panning') setView(panTo(gesture, at));
    else {
      onPointer();
      this.lead(sheet, profile, gesture, at, event);
    }
  }

  private lead(
    sheet: HandSheet,
    profile: Profile,
    gesture: Exclude<Gesture, Panning>,
    at: PixelPoint,
    event: PointerEvent,
  ): void {
    const cursor = gesture.kind === 'idle' ? sideCursor(this.session, profile, sheet.view, at) : null;
    this.element.style.cursor = cursor ?? '';
    this.show(cursor ? EMPTY_HAND : moveHand(this.session, sheet, gesture, at, keysOf(event)));
  }

  private release(): void {
    this.side?.drop(this.session);
    this.side = null;
    const { gesture } = this.hand;
    if (gesture.kind === 'idle') return;
    this.now().tell(releaseHand(this.session, gesture, this.hand));
    this.show(EMPTY_HAND);
  }

  private leave(): void {
    if (this.hand.gesture.kind === 'idle') this.show(EMPTY_HAND);
  }

  private double(event: MouseEvent): void {
    const { sheet, tell } = this.now();
    if (sheet && addVertexAt(this.session, sheet.view, pixelUnder(event, this.element))) tell('A vertex was added.');
  }

  private turn(event: WheelEvent): void {
    event.preventDefault();
    const { sheet, setView } = this.now();
    if (!sheet) return;
    const { deltaX, deltaY, deltaMode, timeStamp } = event;
    const turn = { deltaX, deltaY, deltaMode, ctrl: event.ctrlKey || event.metaKey, shift: event.shiftKey };
    if (isTwoFingers(turn)) this.fingersUntil = timeStamp + FINGERS_MS;
    setView(wheelView(sheet.view, turn, pixelUnder(event, this.element), timeStamp < this.fingersUntil));
  }
}

function sideCursor(session: Session, profile: Profile, view: DrawingView, at: PixelPoint): string | null {
  for (const hand of SIDE_HANDS) {
    const cursor = hand.cursor(session, profile, view, at);
    if (cursor) return cursor;
  }
  return null;
}

/** A double click on an edge adds a vertex there; returns whether one was added. */
function addVertexAt(session: Session, view: DrawingView, at: PixelPoint): boolean {
  const { tool, form, snap, edit } = session.draw.getState();
  if (tool === 'pen' || form === 'mill' || edit?.kind === 'preview') return false;
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
