import { describe, expect, test } from 'vitest';
import type { Family } from '../../../src/family/family.ts';
import { FitCache } from '../../../src/family/fit-cache.ts';
import { dealPairs, knownFits, missingPairs } from '../../../src/family/known-fits.ts';
import { plainConditions } from '../../../src/fit/conditions.ts';
import { UNMEASURED } from '../../../src/fit/judge-fit.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { boxOfMm } from '../../kit/shapes.ts';

const NEW = plainConditions(40_000);
const FIT = { ...UNMEASURED, verdict: 'enters', clearance: 50_000, accuracy: 0 } as const;

function profile(id: string, kind: Profile['kind'], width: number): Profile {
  return { id, kind, name: id, ring: boxOfMm(width, 8) };
}

const family: Family = {
  name: 'Test',
  units: 'mm',
  runningClearance: 40_000,
  tolerance: 0,
  tiltLimit: 0,
  profiles: [
    profile('k1', 'opening', 2.1),
    profile('k2', 'opening', 1.9),
    profile('a', 'blank', 2),
    profile('b', 'blank', 1.8),
  ],
};
const [k1, k2, a, b] = family.profiles;

describe('fits kept by content', () => {
  test('an equal outline under another name is known, another condition is not', () => {
    const cache = new FitCache();
    cache.set(k1.ring, a.ring, NEW, FIT);
    expect(cache.get(boxOfMm(2.1, 8), boxOfMm(2, 8), NEW)).toBe(FIT);
    expect(cache.get(k1.ring, a.ring, { ...NEW, wear: 1_000 })).toBeUndefined();
    expect(cache.get(k1.ring, a.ring, plainConditions(30_000))).toBeUndefined();
    expect(cache.get(k2.ring, a.ring, NEW)).toBeUndefined();
  });

  test('a measured fit is not replaced by an unmeasured one, but the other way round', () => {
    const cache = new FitCache();
    const measured = { ...UNMEASURED, clearance: -200_000, accuracy: 400 };
    cache.set(k1.ring, a.ring, NEW, UNMEASURED);
    cache.set(k1.ring, a.ring, NEW, measured);
    cache.set(k1.ring, a.ring, NEW, UNMEASURED);
    expect(cache.get(k1.ring, a.ring, NEW)).toBe(measured);
  });

  test('what is missing comes with the picked row first, and after an edit is one row or column only', () => {
    const cache = new FitCache();
    expect([...missingPairs(knownFits(family, cache, NEW), false, 'b')]).toEqual([1, 0, 1, 1, 0, 0, 0, 1]);
    for (const opening of [k1, k2]) for (const blank of [a, b]) cache.set(opening.ring, blank.ring, NEW, FIT);
    expect(missingPairs(knownFits(family, cache, NEW), true, null)).toHaveLength(0);
    const edited = { ...family, profiles: family.profiles.with(2, { ...a, ring: boxOfMm(2.01, 8) }) };
    expect([...missingPairs(knownFits(edited, cache, NEW), false, null)]).toEqual([0, 0, 0, 1]);
  });

  test('blocked pairs without a margin are missing only where margins are asked for', () => {
    const cache = new FitCache();
    for (const opening of [k1, k2]) for (const blank of [a, b]) cache.set(opening.ring, blank.ring, NEW, UNMEASURED);
    const known = knownFits(family, cache, NEW);
    expect(missingPairs(known, false, null)).toHaveLength(0);
    expect(missingPairs(known, true, null)).toHaveLength(8);
  });

  test('dealing pairs to threads loses none and gives each thread its share of the first ones', () => {
    const pairs = Uint32Array.from([0, 0, 0, 1, 1, 0, 1, 1, 2, 0]);
    const parts = dealPairs(pairs, 2);
    expect(parts.map((part) => [...part])).toEqual([
      [0, 0, 1, 0, 2, 0],
      [0, 1, 1, 1],
    ]);
    expect(dealPairs(Uint32Array.from([3, 4]), 4)).toHaveLength(1);
  });
});
