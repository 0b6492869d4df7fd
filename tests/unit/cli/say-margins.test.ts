import { describe, expect, test } from 'vitest';
import { sayMargins } from '../../../src/cli/say-margins.ts';
import type { Family } from '../../../src/family/family.ts';
import { asTrustedRing } from '../../../src/geom/ring.ts';

const ring = asTrustedRing([]);
const family: Family = {
  name: 'Polderwick',
  units: 'mm',
  runningClearance: 40_000,
  tolerance: 0,
  tiltLimit: 0,
  profiles: [
    { id: 'o', kind: 'opening', name: 'Heron\u001b keyway', ring },
    { id: 'b', kind: 'blank', name: 'Heron blank', ring },
  ],
};

describe('the margins of a family in words', () => {
  test('each with the pair that sets it, by name, fit for a terminal', () => {
    const text = sayMargins(family, {
      guard: { profile: 'b', opening: 'o', length: 107_480 },
      clearance: { profile: 'b', opening: 'o', length: 42_510, alike: 1 },
    });
    expect(
      text,
    ).toBe(`guard margin        107.5 um: worn by as much, and the keyway too, Heron blank goes into Heron keyway
smallest clearance  42.5 um: Heron blank in Heron keyway, the same for 1 other pair
`);
  });

  test('where there is none it says so', () => {
    const text = sayMargins(family, { guard: null, clearance: null });
    expect(text).toMatch(/^guard margin +none: no blank is stopped/);
    expect(text).toMatch(/\nsmallest clearance +none: no blank goes in anywhere\n$/);
  });
});
