import { useEffect, useRef } from 'react';
import type { ViewName } from '../state/selection-state.ts';

const FIRST_IN_VIEW = {
  wall: '[data-opening][aria-pressed="true"]',
  compare: '[data-drawing]',
  draw: '[data-drawing]',
  tiers: '[data-first]',
  names: '[data-first]',
  teach: '[data-first]',
} as const;

/** Moves the focus along when the view changes: to the drawing in Compare, back to the picked keyway on the wall. */
export function useViewFocus(view: ViewName): void {
  const before = useRef(view);
  useEffect(() => {
    if (before.current === view) return;
    before.current = view;
    const frame = requestAnimationFrame(() =>
      document.querySelector<HTMLElement>(FIRST_IN_VIEW[view])?.focus({ preventScroll: false }),
    );
    return () => cancelAnimationFrame(frame);
  }, [view]);
}
