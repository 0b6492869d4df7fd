import type { DrawingView, PixelPoint } from '../tools/drawing-view.ts';
import { type FingerHold, holdOf, pinchTo } from '../tools/two-fingers.ts';
import { pixelUnder } from './pixel-under.ts';

/** What two fingers need to know of a drawing and may do to it. */
export interface PinchedSheet {
  /** Null until the frame has been laid out. */
  readonly view: DrawingView | null;
  setView(view: DrawingView): void;
  /** Whether the first finger has hold of something that it moves; then the second one does nothing. */
  isHolding(): boolean;
  /** Puts back what the first finger took. */
  letGo(): void;
}

/** A finger that has gone no further than this, in pixels, has not moved anything yet. */
const STILL = 10;

/**
 * Lets two fingers move a drawing and zoom it, before whoever hears the first finger alone. They take over where that
 * finger lies still or moves the sheet; until all of them are lifted, nobody else hears them.
 *
 * @returns how to stop listening.
 * @check tests/browser/two-fingers.test.ts
 */
export function listenToTwoFingers(element: HTMLElement, sheet: () => PinchedSheet): () => void {
  const fingers = new Fingers(element, sheet);
  const hear = (event: Event) => {
    if (!(event instanceof PointerEvent) || event.pointerType !== 'touch') return;
    if (fingers.hear(event)) event.stopPropagation();
  };
  // Heard on the way down: the listeners of the one pointer stand on the same element.
  for (const name of EVENTS) element.addEventListener(name, hear, true);
  return () => {
    for (const name of EVENTS) element.removeEventListener(name, hear, true);
  };
}

const EVENTS = ['pointerdown', 'pointermove', 'pointerup', 'pointercancel'] as const;

/** The fingers on one drawing. */
class Fingers {
  private readonly down = new Map<number, PixelPoint>();
  private start: PixelPoint | null = null;
  /** How the sheet lay, and how it was held, when a finger came or went last; null while one finger leads. */
  private held: { readonly view: DrawingView; readonly hold: FingerHold } | null = null;
  /** The view that was asked for last: fingers move on before it is drawn. */
  private asked: DrawingView | null = null;

  constructor(
    private readonly element: HTMLElement,
    private readonly sheet: () => PinchedSheet,
  ) {}

  /** Returns whether the event belongs to the sheet alone. */
  hear(event: PointerEvent): boolean {
    if (event.type === 'pointerdown') return this.press(event);
    const leads = this.held !== null;
    if (event.type === 'pointermove') this.move(event);
    else this.lift(event);
    return leads;
  }

  private press(event: PointerEvent): boolean {
    // The first finger is primary: whatever was down before it was lifted elsewhere.
    if (event.isPrimary) this.forget();
    const at = pixelUnder(event, this.element);
    this.start ??= at;
    this.down.set(event.pointerId, at);
    if (this.down.size < 2 || (!this.held && this.isTaken())) return false;
    if (!this.held) this.sheet().letGo();
    this.element.setPointerCapture(event.pointerId);
    this.takeHold();
    return true;
  }

  private isTaken(): boolean {
    const [first] = this.down.values();
    const { start } = this;
    const isStill = start && Math.hypot(first.px - start.px, first.py - start.py) <= STILL;
    return !isStill && this.sheet().isHolding();
  }

  private takeHold(): void {
    const hold = holdOf([...this.down.values()]);
    const view = this.asked ?? this.sheet().view;
    this.held = hold && view && { view, hold };
  }

  private move(event: PointerEvent): void {
    if (!this.down.has(event.pointerId)) return;
    this.down.set(event.pointerId, pixelUnder(event, this.element));
    const hold = holdOf([...this.down.values()]);
    if (!this.held || !hold) return;
    this.asked = pinchTo(this.held.view, this.held.hold, hold);
    this.sheet().setView(this.asked);
  }

  /** A finger that stays down after another goes on moving the sheet. */
  private lift(event: PointerEvent): void {
    this.down.delete(event.pointerId);
    if (this.down.size === 0) this.forget();
    else if (this.held) this.takeHold();
  }

  private forget(): void {
    this.down.clear();
    this.start = null;
    this.held = null;
    this.asked = null;
  }
}
