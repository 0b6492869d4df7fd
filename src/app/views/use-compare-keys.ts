import { useEffect, useRef } from 'react';
import type { Family } from '../../family/family.ts';
import type { ShownPair } from '../panels/use-pair.ts';
import { useSession } from '../panels/use-store.ts';
import { moveByHand, snapToBest } from '../state/hand-state.ts';
import { walkEntrants } from '../state/selection-state.ts';
import { nudgeOf } from '../tools/compare/nudging.ts';
import { isFreeKey } from './is-free-key.ts';

interface CompareKeys {
  readonly family: Family;
  readonly pair: ShownPair;
  zoom(factor: number): void;
  /** Shows the whole plug again. */
  fit(): void;
}

/** The keys of Compare: arrows nudge, plus and minus zoom, 0 fits, Home snaps, Page keys walk the blanks, Escape goes back. */
export function useCompareKeys({ family, pair, zoom, fit }: CompareKeys): void {
  const session = useSession();
  const latest = useRef<(event: KeyboardEvent) => boolean>(() => false);
  useEffect(() => {
    const { hand, selection, settings } = session;
    const actions = new Map<string, () => void>([
      ['+', () => zoom(1.25)],
      ['=', () => zoom(1.25)],
      ['-', () => zoom(0.8)],
      ['0', fit],
      ['Home', () => snapToBest(hand)],
      ['PageDown', () => walkEntrants(selection, family, 1)],
      ['PageUp', () => walkEntrants(selection, family, -1)],
      ['Escape', () => selection.setState({ view: 'wall' })],
    ]);
    latest.current = ({ key, shiftKey }) => {
      const nudge = nudgeOf(key, shiftKey, settings.getState().units);
      const action = nudge ? () => moveByHand(hand, pair.fit, nudge) : actions.get(key);
      action?.();
      return action !== undefined;
    };
  });
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (!isFreeKey(event)) return;
      if (event.key === ' ' && event.target.matches('[data-drawing]')) event.preventDefault();
      else if (latest.current(event)) event.preventDefault();
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, []);
}
