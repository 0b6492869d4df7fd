import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import { useSession } from '../../panels/use-store.ts';
import type { DrawingView } from '../../tools/drawing-view.ts';
import { useSpaceHeld } from '../use-space-held.ts';
import { EMPTY_HAND, type HandShown } from './draw-hand.ts';
import { type SheetNow, SheetPointer } from './sheet-pointer.ts';

type DrawGestures = Omit<SheetNow, 'show' | 'spaceHeld'> & { readonly frame: RefObject<HTMLElement | null> };

/** What the pointer does on the sheet, and the way to give it up. */
export interface DrawHand extends HandShown {
  /** Gives up what is held; returns whether something was. */
  giveUp(): boolean;
}

/** Lets the pointer choose, drag, bow and add, draw with the pen, move the sheet and zoom. */
export function useDrawGestures(given: DrawGestures): DrawHand {
  const { frame } = given;
  const session = useSession();
  const [shown, show] = useState<HandShown>(EMPTY_HAND);
  const spaceHeld = useSpaceHeld();
  const pointer = useRef<SheetPointer | null>(null);
  // The pointer listens as long as the frame stands; what it needs to know is handed to it here after each drawing. A view
  // holds at once: the next turn of the wheel, or the next press, may come before the drawing does.
  const latest = useRef(given);
  useEffect(() => {
    const setView = (view: DrawingView) => {
      const { sheet } = latest.current;
      latest.current = { ...latest.current, sheet: sheet && { ...sheet, view } };
      given.setView(view);
    };
    latest.current = { ...given, setView };
  });
  useEffect(() => {
    if (!frame.current) return;
    const now = () => ({ ...latest.current, show, spaceHeld: spaceHeld.current });
    pointer.current = new SheetPointer(session, frame.current, now);
    const stop = pointer.current.listen();
    return () => {
      stop();
      pointer.current?.giveUp();
    };
  }, [frame, session, spaceHeld]);
  const giveUp = useCallback(() => pointer.current?.giveUp() ?? false, []);
  return { ...shown, giveUp };
}
