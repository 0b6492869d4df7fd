import { useCallback, useEffect, useRef } from 'react';
import { type InsertionRange, insertedBy } from '../../state/publish/block-pair.ts';
import type { BlockLook } from '../../state/publish/block-state.ts';
import type { Store } from '../../state/store.ts';

/** The way from the wait before the block to its shoulder takes so long, milliseconds. */
const WAY_MS = 1600;

/** What moves a coupon along its way. */
export interface Slide {
  /** Millimetres as it is. */
  readonly inserted: number;
  /** To a place on its way, as far as it goes. */
  to(inserted: number): void;
  by(mm: number): void;
  /** From where it waits to where it must stop; where it is there, out again. Without motion for who asks for none. */
  play(): void;
}

/** Slides the coupon of a store. Nothing is drawn while nothing moves. */
export function useSlide(store: Store<BlockLook>, range: InsertionRange | null): Slide {
  const frame = useRef(0);
  const halt = useCallback(() => cancelAnimationFrame(frame.current), []);
  useEffect(() => halt, [halt]);
  const wished = store.getState().inserted;
  const inserted = range ? insertedBy(range, wished) : 0;
  const to = (next: number) => {
    halt();
    if (range) store.setState({ inserted: insertedBy(range, next) });
  };
  const play = () => {
    if (!range) return;
    halt();
    const goal = inserted >= range.stops ? range.waits : range.stops;
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) return to(goal);
    const speed = ((range.whole - range.waits) / WAY_MS) * Math.sign(goal - inserted);
    let before = performance.now();
    const step = (now: number) => {
      const at = insertedBy(range, store.getState().inserted) + speed * Math.max(0, now - before);
      before = now;
      const arrived = speed > 0 ? at >= goal : at <= goal;
      store.setState({ inserted: arrived ? goal : at });
      if (!arrived) frame.current = requestAnimationFrame(step);
    };
    frame.current = requestAnimationFrame(step);
  };
  return { inserted, to, by: (mm) => to(inserted + mm), play };
}
