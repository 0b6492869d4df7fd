import { expect, it } from 'vitest';
import { asTrustedRing } from '../../../src/geom/ring.ts';
import { outlineKey } from '../../../src/profile/outline-key.ts';

const L = asTrustedRing([
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 4, y: 1 },
  { x: 1, y: 1 },
  { x: 1, y: 8 },
  { x: 0, y: 8 },
]);

it('is the same for a ring that is moved and starts at another vertex', () => {
  const moved = L.map(({ x, y }) => ({ x: x + 1_000_000, y: y - 7 }));
  for (let first = 0; first < L.length; first += 1)
    expect(outlineKey(asTrustedRing([...moved.slice(first), ...moved.slice(0, first)]))).toBe(outlineKey(L));
});

it('is another for a mirrored ring and for one that differs by a nanometre', () => {
  expect(outlineKey(asTrustedRing(L.map(({ x, y }) => ({ x: 4 - x, y })).reverse()))).not.toBe(outlineKey(L));
  expect(outlineKey(asTrustedRing(L.map((p, i) => (i === 2 ? { x: 4, y: 2 } : p))))).not.toBe(outlineKey(L));
});
