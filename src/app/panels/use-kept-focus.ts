import { type RefObject, useEffect, useRef } from 'react';

/**
 * Keeps the focus in an area where the element that had it goes from the page, as after a deletion or an undo: it goes to
 * the candidate at the same place. Whoever leaves the area by Tab or by a click is let go.
 *
 * @param selectors candidates within the area; the first selector that finds any is taken.
 */
export function useKeptFocus(area: RefObject<HTMLElement | null>, selectors: readonly string[]): void {
  const had = useRef<readonly number[] | null>(null);
  const wanted = useRef(selectors);
  useEffect(() => {
    const root = area.current;
    if (!root) return;
    const onFocusIn = ({ target }: FocusEvent) => {
      if (target instanceof Element) had.current = wanted.current.map((selector) => placeOf(root, selector, target));
    };
    const onFocusOut = ({ target, relatedTarget }: FocusEvent) => {
      if (relatedTarget instanceof Node && !root.contains(relatedTarget)) had.current = null;
      // A click beside everything leaves the element where it was.
      queueMicrotask(() => {
        if (document.activeElement !== document.body || !(target instanceof Element)) return;
        if (target.isConnected && !target.matches(':disabled')) had.current = null;
      });
    };
    root.addEventListener('focusin', onFocusIn);
    root.addEventListener('focusout', onFocusOut);
    return () => {
      root.removeEventListener('focusin', onFocusIn);
      root.removeEventListener('focusout', onFocusOut);
    };
  }, [area]);
  useEffect(() => {
    if (had.current === null || document.activeElement !== document.body || !area.current) return;
    for (const [i, selector] of wanted.current.entries()) {
      const found = [...area.current.querySelectorAll<HTMLElement>(selector)];
      if (found.length === 0) continue;
      found[Math.min(had.current[i] ?? 0, found.length - 1)].focus();
      return;
    }
  });
}

/** How many candidates stand before an element. */
function placeOf(root: Element, selector: string, target: Element): number {
  const before = (candidate: Element) =>
    candidate !== target && (candidate.compareDocumentPosition(target) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  return [...root.querySelectorAll(selector)].filter(before).length;
}
