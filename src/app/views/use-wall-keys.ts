import { type RefObject, useEffect } from 'react';
import type { Family } from '../../family/family.ts';
import { useSession } from '../panels/use-store.ts';
import { walkEntrants, walkOpenings } from '../state/selection-state.ts';

const STEPS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 };

/**
 * The arrow keys of the wall: they walk the blanks wherever the focus is, but with the focus on a cell left
 * and right go from keyway to keyway. Fields and lists that use the arrows themselves keep them.
 */
export function useWallKeys(family: Family, frame: RefObject<HTMLElement | null>): void {
  const { selection } = useSession();
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey || !(event.key in STEPS)) return;
      if (!(event.target instanceof Element) || event.target.closest('input, select, textarea, [popover]')) return;
      event.preventDefault();
      const onCell = frame.current?.contains(event.target) && event.target !== frame.current;
      const sideways = event.key === 'ArrowLeft' || event.key === 'ArrowRight';
      if (onCell && sideways) stepCell(STEPS[event.key]);
      else walkEntrants(selection, family, STEPS[event.key]);
    };
    const stepCell = (step: number) => {
      walkOpenings(selection, family, step);
      requestAnimationFrame(() => frame.current?.querySelector<HTMLElement>('[aria-pressed="true"]')?.focus());
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, [family, frame, selection]);
}
