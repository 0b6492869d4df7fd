import { useEffect, useRef } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Point } from '../../../geom/point.ts';
import {
  beginCorner,
  chosenCorner,
  finishCorner,
  giveUpCorner,
  moveCorner,
  toggleCorners,
  walkCorners,
} from '../../panels/compare/corner-editing.ts';
import { cornersOf } from '../../panels/compare/corner-state.ts';
import { isFreeKey } from '../../panels/is-free-key.ts';
import type { ShownPair } from '../../panels/use-pair.ts';
import { useSession } from '../../panels/use-store.ts';
import { moveByHand, snapToBest } from '../../state/hand-state.ts';
import { walkEntrants } from '../../state/selection-state.ts';
import type { Session } from '../../state/session.ts';
import { nudgeOf } from '../../tools/compare/nudging.ts';
import { standInKeyway } from './stand-in-keyway.ts';
import type { Push } from './use-compare-push.ts';

interface CompareKeys {
  readonly family: Family;
  readonly pair: ShownPair;
  readonly push: Push;
  zoom(factor: number): void;
  /** Shows the whole plug again. */
  fit(): void;
}

/**
 * The keys of Compare: arrows nudge the blank or the chosen corner, plus and minus zoom, 0 fits, Home snaps, M stands
 * the blank centred, Page keys walk the blanks, I pushes the blank in, C shows corners, brackets choose one. Escape gives
 * up what is under way, then goes back.
 */
export function useCompareKeys({ family, pair, push, zoom, fit }: CompareKeys): void {
  const session = useSession();
  const latest = useRef<(event: KeyboardEvent & { target: Element }) => boolean>(() => false);
  useEffect(() => {
    const { hand, selection, settings } = session;
    const actions = new Map<string, () => void>([
      ['+', () => zoom(1.25)],
      ['=', () => zoom(1.25)],
      ['-', () => zoom(0.8)],
      ['0', fit],
      ['Home', () => snapToBest(hand)],
      ['m', () => standInKeyway(session, pair)],
      ['PageDown', () => walkEntrants(selection, family, 1)],
      ['PageUp', () => walkEntrants(selection, family, -1)],
      ['i', () => push.end() || push.begin()],
      ['c', () => toggleCorners(session)],
      ['[', () => walkCorners(session, pair, -1)],
      [']', () => walkCorners(session, pair, 1)],
      ['Escape', () => push.end() || giveUpCorner(session) || leave(session)],
    ]);
    latest.current = ({ key, shiftKey, target }) => {
      const nudge = nudgeOf(key, shiftKey, settings.getState().units);
      const onCorner = cornersOf(session).getState().on && !target.closest('[data-map]');
      const move = onCorner ? nudgeCorner : nudgeBlank;
      const action = nudge ? () => move(session, pair, nudge) : actions.get(key.length === 1 ? key.toLowerCase() : key);
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
    // A key that is held moves a corner on and on; letting it go makes one step of undo of it.
    const onKeyUp = (event: KeyboardEvent) => {
      if (event.key.startsWith('Arrow')) finishCorner(session);
    };
    const letGo = () => finishCorner(session);
    addEventListener('keydown', onKeyDown);
    addEventListener('keyup', onKeyUp);
    addEventListener('blur', letGo);
    return () => {
      letGo();
      removeEventListener('blur', letGo);
      removeEventListener('keydown', onKeyDown);
      removeEventListener('keyup', onKeyUp);
    };
  }, [session]);
}

function nudgeBlank({ hand }: Session, { fit }: ShownPair, by: Point): void {
  moveByHand(hand, fit, by);
}

function nudgeCorner(session: Session, pair: ShownPair, by: Point): void {
  const { x, y } = chosenCorner(session, pair);
  beginCorner(session, pair);
  moveCorner(session, { x: x + by.x, y: y + by.y });
}

/** Puts the corners away where they are shown, else goes back to the wall. */
function leave(session: Session): void {
  if (cornersOf(session).getState().on) toggleCorners(session);
  else session.selection.setState({ view: 'wall' });
}
