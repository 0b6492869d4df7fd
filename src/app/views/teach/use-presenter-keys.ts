import { useEffect, useRef } from 'react';
import { showActOf } from '../../state/teach/show-place.ts';
import type { PointerDot } from './use-pointer-dot.ts';

/** What can be done while a lesson is shown. */
export interface PresenterActs {
  next(): void;
  previous(): void;
  first(): void;
  last(): void;
  end(): void;
  /** Darkens the screen, or brings it back. */
  dark(): void;
  /** Pushes the blank in once more. */
  again(): void;
  /** Fills the screen, or the window only. */
  screen(): void;
  /** Goes to the step of a number from 0. */
  go(step: number): void;
}

interface Given {
  readonly acts: PresenterActs;
  readonly pointer: PointerDot;
  /** Digits typed so far, of the number of a step. */
  readonly typed: string;
  readonly dark: boolean;
  setTyped(typed: string): void;
}

/** A lesson has at most three digits of steps. */
const MOST_DIGITS = 3;

/**
 * The keys of a lesson that is shown, those of a clicker among them. They are heard before anything else of the window, which
 * hears none of them; Tab and the browser's own shortcuts are left alone.
 */
export function usePresenterKeys(given: Given): void {
  const latest = useRef(given);
  useEffect(() => {
    latest.current = given;
  });
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      event.stopPropagation();
      if (event.key === 'Tab' || event.altKey || event.ctrlKey || event.metaKey) {
        // Undo and save would change what is not seen.
        if (/^[zys]$/i.test(event.key)) event.preventDefault();
        return;
      }
      const onButton = event.target instanceof Element && event.target.closest('button') !== null;
      if (onButton && (event.key === 'Enter' || event.key === ' ')) return;
      if (press(event, latest.current)) event.preventDefault();
    };
    const onKeyUp = (event: KeyboardEvent) => {
      event.stopPropagation();
      if (event.key.toLowerCase() === 'l') latest.current.pointer.release(event.timeStamp);
    };
    addEventListener('keydown', onKeyDown, { capture: true });
    addEventListener('keyup', onKeyUp, { capture: true });
    return () => {
      removeEventListener('keydown', onKeyDown, { capture: true });
      removeEventListener('keyup', onKeyUp, { capture: true });
    };
  }, []);
}

function press(event: KeyboardEvent, { acts, pointer, typed, dark, setTyped }: Given): boolean {
  // A clicker's key to begin would load the page again.
  if (event.key === 'F5') return !event.shiftKey;
  const asked = showActOf(event.key, event.shiftKey);
  if (!asked) return false;
  if (asked.act === 'digit') {
    setTyped((typed + asked.digit).slice(-MOST_DIGITS));
    return true;
  }
  setTyped('');
  if (asked.act === 'pointer') pointer.press(event.timeStamp);
  else if (asked.act === 'go') typed === '' ? acts.next() : acts.go(Number(typed) - 1);
  else if (asked.act === 'end' && typed !== '') return true;
  else if (asked.act === 'end' && dark) acts.dark();
  else if (!event.repeat || asked.act === 'next' || asked.act === 'previous') acts[asked.act]();
  return true;
}
