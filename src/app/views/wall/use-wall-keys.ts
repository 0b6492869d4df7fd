import { useEffect } from 'react';
import type { Family } from '../../../family/family.ts';
import { isFreeKey } from '../../panels/is-free-key.ts';
import { useSession } from '../../panels/use-store.ts';
import { isPair, walkEntrants, walkOpenings } from '../../state/selection-state.ts';
import type { Session } from '../../state/session.ts';

const STEPS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 };

/**
 * The arrow keys of the wall: they walk the blanks wherever the focus is, but with the focus on a cell left
 * and right go from keyway to keyway. Enter opens the picked pair in Compare.
 */
export function useWallKeys(family: Family): void {
  const { selection } = useSession();
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (!isFreeKey(event)) return;
      if (event.key === 'Enter') openCompare(selection, event.target);
      if (!(event.key in STEPS)) return;
      event.preventDefault();
      const onCell = event.target.closest('[data-opening]') !== null;
      const sideways = event.key === 'ArrowLeft' || event.key === 'ArrowRight';
      if (onCell && sideways) stepCell(selection, family, STEPS[event.key]);
      else walkEntrants(selection, family, STEPS[event.key]);
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, [family, selection]);
}

/** Opens the picked pair, unless the key was meant for a button. */
function openCompare(selection: Session['selection'], target: Element): void {
  if (isPair(selection.getState()) && !target.closest('button')) selection.setState({ view: 'compare' });
}

/** Picks the next keyway and takes the focus along, with the press: Enter struck at once is meant for that one. */
function stepCell(selection: Session['selection'], family: Family, step: number): void {
  walkOpenings(selection, family, step);
  const { openingId } = selection.getState();
  if (openingId !== null) document.querySelector<HTMLElement>(`[data-opening="${CSS.escape(openingId)}"]`)?.focus();
}
