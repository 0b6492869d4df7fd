import { useEffect, useRef } from 'react';

/**
 * Takes the focus along where something comes or goes and takes the control that had it with it.
 *
 * @param isThere whether it is there now; nothing is done before that changes.
 * @param selector of what is to have the focus then.
 */
export function useFocusAlong(isThere: boolean, selector: string): void {
  const had = useRef(isThere);
  useEffect(() => {
    if (had.current === isThere) return;
    had.current = isThere;
    if (document.activeElement === document.body) document.querySelector<HTMLElement>(selector)?.focus();
  }, [isThere, selector]);
}
