/** What is seen of a blank that is pushed in, from the front. */
export type Pushed =
  /** It comes to the front of the plug: `near` goes from 0 to 1. */
  | { readonly phase: 'coming'; readonly near: number }
  /** It stands at the front face, since something is in the way; `lit` tells whether that is lit up now. */
  | { readonly phase: 'stopped'; readonly lit: boolean }
  /** It is in, and sinks to its seat: `down` goes from 0 to 1. */
  | { readonly phase: 'in'; readonly down: number };

/** Milliseconds on the way to the front, and from there to the seat. */
const COMING = 900;
const SINKING = 450;
/** A flash and a pause; two flashes a second stay below what may harm. */
const FLASH = 500;
const FLASHES = 3;

/** How long the picture changes, in milliseconds; then it stays as it is. */
export function pushLength(goesIn: boolean): number {
  return COMING + (goesIn ? SINKING : FLASH * FLASHES);
}

/**
 * What is seen `ms` milliseconds after the push began.
 *
 * @param goesIn whether the blank is free where it is pushed.
 * @param calm true for who asks for less motion: it stands before the plug, then it is in or stopped, without a move
 * or a flash between.
 * @check tests/unit/app/compare-pushing.test.ts
 */
export function pushedAt(ms: number, goesIn: boolean, calm: boolean): Pushed {
  if (ms < COMING) return { phase: 'coming', near: calm ? 0.5 : eased(ms / COMING) };
  const after = ms - COMING;
  if (goesIn) return { phase: 'in', down: calm ? 1 : eased(Math.min(1, after / SINKING)) };
  return { phase: 'stopped', lit: calm || after >= FLASH * FLASHES || after % FLASH < FLASH / 2 };
}

/** Starts and ends slowly. */
function eased(t: number): number {
  return t * t * (3 - 2 * t);
}
