import type { Ring } from '../geom/ring.ts';

const keys = new WeakMap<Ring, string>();

/**
 * A text that is the same for outlines of one shape, wherever they are drawn and whichever vertex comes first: profiles
 * with one key fit alike.
 *
 * @check tests/unit/profile/outline-key.test.ts, tests/unit/claims/resolve-claims.test.ts
 */
export function outlineKey(ring: Ring): string {
  const known = keys.get(ring);
  if (known !== undefined) return known;
  const first = lowestLeft(ring);
  const { x, y } = ring[first];
  const key = ring.map((_, i) => ring[(first + i) % ring.length]).map((p) => `${p.x - x} ${p.y - y}`);
  const text = key.join(' ');
  keys.set(ring, text);
  return text;
}

/** The number of the lowest vertex, the leftmost of several. */
function lowestLeft(ring: Ring): number {
  let best = 0;
  for (const [i, { x, y }] of ring.entries())
    if (y < ring[best].y || (y === ring[best].y && x < ring[best].x)) best = i;
  return best;
}
