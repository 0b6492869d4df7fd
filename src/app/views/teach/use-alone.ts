import { type RefObject, useEffect } from 'react';

/** While an element is there, all that stands beside it hears and says nothing; afterwards the focus is where it was. */
export function useAlone(element: RefObject<HTMLElement | null>, otherwise: string): void {
  useEffect(() => {
    const shown = element.current;
    const before = document.activeElement;
    const others = [...(shown?.parentElement?.children ?? [])].filter((other) => other !== shown);
    for (const other of others) other.setAttribute('inert', '');
    shown?.focus({ preventScroll: true });
    return () => {
      for (const other of others) other.removeAttribute('inert');
      const back = before instanceof HTMLElement && before.isConnected && before !== document.body ? before : null;
      (back ?? document.querySelector<HTMLElement>(otherwise))?.focus({ preventScroll: true });
    };
  }, [element, otherwise]);
}
