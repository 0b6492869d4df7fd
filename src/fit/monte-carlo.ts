/** A source of random numbers, uniform in [0, 1). */
export type Random = () => number;

/**
 * Random numbers from a seed: the same seed gives the same run everywhere.
 *
 * @source mulberry32 by T. Ettinger, 2017, public domain (from memory): 32 bits of state, period 2^32.
 */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * The same things in another order, each order as likely.
 *
 * @source R. A. Fisher, F. Yates, Statistical Tables (1938), in R. Durstenfeld's form (1964), from memory.
 */
export function shuffled<T>(things: readonly T[], random: Random): T[] {
  const order = [...things];
  for (let i = order.length - 1; i > 0; i--) {
    const k = Math.floor(random() * (i + 1));
    [order[i], order[k]] = [order[k], order[i]];
  }
  return order;
}

/** A share of successes with the range in which the true share lies at 95 % confidence. */
export interface Share {
  readonly share: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The share of successes among `count` trials with its 95 % confidence interval.
 *
 * @source E. B. Wilson, J. Amer. Statist. Assoc. 22 (1927) 209-212: score interval (from memory).
 */
export function shareOf(successes: number, count: number): Share {
  const z = 1.959964;
  const p = successes / count;
  const spread = 1 + (z * z) / count;
  const centre = (p + (z * z) / (2 * count)) / spread;
  const half = (z / spread) * Math.sqrt((p * (1 - p)) / count + (z * z) / (4 * count * count));
  return { share: p, from: Math.max(0, centre - half), to: Math.min(1, centre + half) };
}
