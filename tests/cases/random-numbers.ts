/**
 * Repeatable random numbers, so that a generated case is named by its seed.
 *
 * @source mulberry32, Tommy Ettinger 2017, public domain: a 32-bit counter stepped by 0x6D2B79F5 and mixed
 * by two multiply-xorshift rounds (constants from memory; tests/outside/engines.test.ts holds the
 * first outputs of seed 0 and the flatness of the draw).
 */
export interface RandomNumbers {
  /** The next number in [0, 1). */
  next(): number;
  /** A number in [low, high). */
  between(low: number, high: number): number;
  /** A whole number in [low, high], both ends included. */
  whole(low: number, high: number): number;
  /** True with the given probability. */
  chance(probability: number): boolean;
  /** One element; `from` must not be empty. */
  pick<T>(from: readonly T[]): T;
  /** The elements in a random order, in a new array. */
  shuffled<T>(from: readonly T[]): T[];
}

/** A stream of random numbers that depends on `seed` only. */
export function randomNumbers(seed: number): RandomNumbers {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  return {
    next,
    whole,
    between: (low, high) => low + next() * (high - low),
    chance: (probability) => next() < probability,
    pick: (from) => from[whole(0, from.length - 1)],
    shuffled: (from) => shuffle([...from], whole),
  };
}

/** Fisher-Yates, in place. */
function shuffle<T>(items: T[], whole: (low: number, high: number) => number): T[] {
  for (let i = items.length - 1; i > 0; i--) {
    const j = whole(0, i);
    [items[i], items[j]] = [items[j], items[i]];
  }
  return items;
}
