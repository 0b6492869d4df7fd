import { useEffect, useRef, useState } from 'react';
import { type Pushed, pushedAt, pushLength } from '../../../tools/compare/pushing.ts';

/** A room follows a push at this share of the speed that a desk does. */
const PACE = 0.6;

const BEFORE: Pushed = { phase: 'coming', near: 0 };

/**
 * A push that begins when the picture appears, and again when `run` is another number.
 *
 * @param goesIn null where nothing is to be pushed.
 * @returns null where nothing is pushed.
 */
export function usePush(goesIn: boolean | null, run: number): Pushed | null {
  const [pushed, setPushed] = useState<Pushed>(BEFORE);
  const frame = useRef(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another run begins it again
  useEffect(() => {
    if (goesIn === null) return;
    const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
    // The first frame may be late: what it shows is the beginning all the same.
    let start: number | null = null;
    const draw = (now: number) => {
      start ??= now;
      const ms = (now - start) * PACE;
      setPushed(pushedAt(ms, goesIn, calm));
      if (ms < pushLength(goesIn)) frame.current = requestAnimationFrame(draw);
    };
    setPushed(pushedAt(0, goesIn, calm));
    frame.current = requestAnimationFrame(draw);
    return () => cancelAnimationFrame(frame.current);
  }, [goesIn, run]);
  return goesIn === null ? null : pushed;
}
