import { useState } from 'react';

/**
 * What is typed into a field over the value it shows, until it is taken or that value becomes another one.
 *
 * @returns what is typed, null where nothing is, and the way to change it.
 */
export function useTyped(shown: string): readonly [string | null, (typed: string | null) => void] {
  const [held, setHeld] = useState<{ readonly typed: string; readonly over: string } | null>(null);
  const isStale = held !== null && held.over !== shown;
  if (isStale) setHeld(null);
  const setTyped = (typed: string | null) => setHeld(typed === null ? null : { typed, over: shown });
  return [held === null || isStale ? null : held.typed, setTyped];
}
