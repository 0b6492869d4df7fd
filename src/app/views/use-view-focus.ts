import { useEffect, useRef } from 'react';
import type { ViewName } from '../state/selection-state.ts';

const FIRST_IN_VIEW = {
  wall: '[data-opening][aria-pressed="true"]',
  compare: '[data-drawing]',
  draw: '[data-drawing]',
  tiers: '[data-first]',
  plan: '[data-first]',
  gauge: '[data-first]',
  publish: '[data-first]',
  names: '[data-question]',
  teach: '[data-first]',
} as const;

/**
 * Moves the focus along when the view changes: to the drawing, the picked keyway on the wall, the question line. Where somebody
 * has moved it before that, it stays there.
 */
export function useViewFocus(view: ViewName): void {
  const before = useRef(view);
  useEffect(() => {
    if (before.current === view) return;
    before.current = view;
    const had = document.activeElement;
    const frame = requestAnimationFrame(() => {
      const { activeElement, body } = document;
      if (activeElement === had || activeElement === body)
        firstIn(FIRST_IN_VIEW[view])?.focus({ preventScroll: false });
    });
    return () => cancelAnimationFrame(frame);
  }, [view]);
}

/** What is to have the focus first: what somebody came for; where neither is there, the key of the sheet that is shown. */
function firstIn(usual: string): HTMLElement | null {
  const first = document.querySelector<HTMLElement>('[data-wanted]') ?? document.querySelector<HTMLElement>(usual);
  return first ?? document.querySelector<HTMLElement>('[data-first]');
}
