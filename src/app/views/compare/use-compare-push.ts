import { useCallback, useEffect, useRef, useState } from 'react';
import type { ShownPair } from '../../panels/use-pair.ts';
import { type Pushed, pushedAt, pushLength } from '../../tools/compare/pushing.ts';

/** A push as the drawing shows it, and the ways to begin and to end one. */
export interface Push {
  /** Null while nothing is pushed. */
  readonly pushed: Pushed | null;
  begin(): void;
  /** Takes the blank out again; returns whether there was anything to take out. */
  end(): boolean;
}

/**
 * Pushes the blank in where it lies, for the eye only: nothing is moved or judged. Whatever changes the pair or moves
 * the blank ends it.
 */
export function useComparePush(pair: ShownPair): Push {
  const [pushed, setPushed] = useState<Pushed | null>(null);
  const frame = useRef(0);
  const goesIn = pair.explanation.gap >= 0;
  const end = useCallback(() => {
    const wasPushed = frame.current !== 0;
    cancelAnimationFrame(frame.current);
    frame.current = 0;
    setPushed(null);
    return wasPushed;
  }, []);
  const begin = useCallback(() => {
    end();
    const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
    // The first frame may be late: what it shows is the beginning all the same.
    let start: number | null = null;
    const draw = (now: number) => {
      start ??= now;
      const ms = now - start;
      setPushed(pushedAt(ms, goesIn, calm));
      // The last frame is kept as a mark that the blank is in.
      if (ms < pushLength(goesIn)) frame.current = requestAnimationFrame(draw);
    };
    frame.current = requestAnimationFrame(draw);
  }, [end, goesIn]);
  const { entrant, opening, placement, shapes } = pair;
  // biome-ignore lint/correctness/useExhaustiveDependencies: ends when any of these is another one
  useEffect(() => {
    end();
  }, [end, entrant, opening, placement, shapes]);
  useEffect(() => () => cancelAnimationFrame(frame.current), []);
  return { pushed, begin, end };
}

/** What is seen of a push, in words. */
export function pushWords(pushed: Pushed, { entrant, opening, byHand, fit }: ShownPair, inTheWay: string): string {
  if (pushed.phase === 'coming') return `${entrant.name} comes to ${opening.name} …`;
  if (pushed.phase === 'in') return 'It goes in and lies on its seat.';
  const snap = byHand && fit.verdict !== 'blocked' ? ' From its best placement it goes in.' : '';
  return `It stops at the front: the ${inTheWay} is in the way.${snap}`;
}
