import { type RefObject, useEffect, useRef } from 'react';
import { dragView, moveView, type TurnedView, zoomView } from '../../canvas/solid/turned-view.ts';
import { type PixelPoint, wheelFactor } from '../../tools/drawing-view.ts';
import { type FingerHold, holdOf } from '../../tools/two-fingers.ts';
import { pixelUnder } from '../pixel-under.ts';

/** What a solid picture lets the pointer do. */
export interface SolidPointer {
  readonly view: TurnedView;
  setView(view: TurnedView): void;
  /** A press and a release at one place. */
  onClick(at: PixelPoint): void;
  /** What a press takes hold of other than the whole: told each move in pixels; null where it holds nothing. */
  hold(at: PixelPoint): ((dx: number, dy: number) => void) | null;
}

/** A press is no drag before so many pixels. */
const STILL = 4;

/** Lets the pointer turn a picture of solids, move it (second key, or shift), zoom it and take hold of a part. */
export function useSolidPointer(frame: RefObject<HTMLElement | null>, given: SolidPointer): void {
  const latest = useRef(given);
  useEffect(() => {
    latest.current = given;
  });
  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const hand = new SolidHand(element, () => latest.current);
    return hand.listen();
  }, [frame]);
}

/** The pointers on one frame. */
class SolidHand {
  private readonly down = new Map<number, PixelPoint>();
  private start: PixelPoint | null = null;
  private isDrag = false;
  private moves = false;
  private held: ((dx: number, dy: number) => void) | null = null;
  /** How two fingers held the picture when they were heard last. */
  private pinch: FingerHold | null = null;

  constructor(
    private readonly element: HTMLElement,
    private readonly now: () => SolidPointer,
  ) {}

  /** Returns how to stop listening. */
  listen(): () => void {
    const listeners: readonly [string, (event: never) => void][] = [
      ['pointerdown', (event: PointerEvent) => this.press(event)],
      ['pointermove', (event: PointerEvent) => this.move(event)],
      ['pointerup', (event: PointerEvent) => this.release(event, true)],
      ['pointercancel', (event: PointerEvent) => this.release(event, false)],
      ['wheel', (event: WheelEvent) => this.wheel(event)],
      ['contextmenu', (event: Event) => event.preventDefault()],
    ];
    for (const [name, listener] of listeners)
      this.element.addEventListener(name, listener as EventListener, { passive: false });
    return () => {
      for (const [name, listener] of listeners) this.element.removeEventListener(name, listener as EventListener);
    };
  }

  private press(event: PointerEvent): void {
    // Keys that lie on the picture are pressed, not dragged.
    if (event.target instanceof Element && event.target.closest('button, input')) return;
    const at = pixelUnder(event, this.element);
    this.down.set(event.pointerId, at);
    this.element.setPointerCapture(event.pointerId);
    if (event.button === 1) event.preventDefault();
    if (this.down.size > 1) {
      this.pinch = holdOf([...this.down.values()]);
      this.held = null;
      this.isDrag = true;
      return;
    }
    this.start = at;
    this.isDrag = false;
    this.moves = event.button !== 0 || event.shiftKey;
    this.held = this.moves ? null : this.now().hold(at);
  }

  private move(event: PointerEvent): void {
    const before = this.down.get(event.pointerId);
    if (!before || !this.start) return;
    const at = pixelUnder(event, this.element);
    if (!this.isDrag && Math.hypot(at.px - this.start.px, at.py - this.start.py) < STILL) return;
    this.isDrag = true;
    this.down.set(event.pointerId, at);
    const { view, setView } = this.now();
    const [dx, dy] = [at.px - before.px, at.py - before.py];
    if (this.pinch) setView(this.pinched(view, this.pinch));
    else if (this.held) this.held(dx, dy);
    else if (this.moves) setView(this.movedBy(view, dx, dy));
    else setView(dragView(view, dx, dy));
  }

  private release(event: PointerEvent, clicks: boolean): void {
    if (!this.down.delete(event.pointerId)) return;
    if (clicks && !this.isDrag && this.start && event.button === 0) this.now().onClick(this.start);
    this.pinch = null;
    this.held = null;
    // A finger that stays down after two goes on turning.
    if (this.down.size === 0) this.start = null;
  }

  private wheel(event: WheelEvent): void {
    event.preventDefault();
    const { view, setView } = this.now();
    setView(zoomView(view, wheelFactor(event.deltaY, event.deltaMode)));
  }

  private pinched(view: TurnedView, before: FingerHold): TurnedView {
    const next = holdOf([...this.down.values()]);
    if (!next) return view;
    this.pinch = next;
    const zoomed = zoomView(view, next.apart / before.apart);
    return this.movedBy(zoomed, next.middle.px - before.middle.px, next.middle.py - before.middle.py);
  }

  /** A scene fills about the height of its frame, two radii. */
  private movedBy(view: TurnedView, dx: number, dy: number): TurnedView {
    const radius = (this.element.clientHeight / 2) * view.near;
    return moveView(view, dx / radius, -dy / radius);
  }
}
