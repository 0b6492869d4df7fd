import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { BittingRules } from '../../src/capacity/bitting-rules.ts';
import { countingBittings } from '../../src/capacity/count-bittings.ts';
import { finish } from '../kit/traced.ts';

/** Small systems with every rule there is, alone and together. */
const smallRules: fc.Arbitrary<BittingRules> = fc
  .record({ chambers: fc.integer({ min: 1, max: 5 }), depths: fc.integer({ min: 2, max: 6 }) })
  .chain(({ chambers, depths }) => {
    const depth = fc.integer({ min: 0, max: depths - 1 });
    return fc.record({
      chambers: fc.constant(chambers),
      depths: fc.constant(depths),
      maximumAdjacent: fc.option(fc.integer({ min: 0, max: depths })),
      excluded: fc.array(fc.array(depth, { maxLength: 3 }), { maxLength: chambers }),
      mostAlike: fc.option(fc.integer({ min: 1, max: chambers })),
      leastDifferent: fc.integer({ min: 1, max: Math.min(chambers, depths) }),
      progression: fc.constantFrom('one-step' as const, 'two-step' as const),
      parity: fc.array(fc.constantFrom('even' as const, 'odd' as const), { maxLength: chambers }),
      master: fc.option(fc.array(depth, { minLength: chambers, maxLength: chambers })),
    });
  });

/** All bittings one by one, each held against the rules as they are said, in the order of their depths. */
function listed(rules: BittingRules): number[][] {
  const found: number[][] = [];
  for (let code = 0; code < rules.depths ** rules.chambers; code++) {
    const cuts = Array.from(
      { length: rules.chambers },
      (_, i) => Math.floor(code / rules.depths ** (rules.chambers - 1 - i)) % rules.depths,
    );
    if (keeps(cuts, rules)) found.push(cuts);
  }
  return found;
}

function keeps(cuts: readonly number[], rules: BittingRules): boolean {
  if (new Set(cuts).size < rules.leastDifferent) return false;
  if (longestRun(cuts) > (rules.mostAlike ?? cuts.length)) return false;
  return cuts.every((depth, i) => {
    if (rules.excluded[i]?.includes(depth)) return false;
    if (rules.master?.[i] === depth) return false;
    if (i > 0 && rules.maximumAdjacent !== null && Math.abs(depth - cuts[i - 1]) > rules.maximumAdjacent) return false;
    if (rules.progression === 'one-step') return true;
    if (rules.master) return Math.abs(depth - rules.master[i]) % 2 === 0;
    return depth % 2 === (rules.parity[i] === 'odd' ? 1 : 0);
  });
}

function longestRun(cuts: readonly number[]): number {
  let longest = 0;
  for (let i = 0, run = 0; i < cuts.length; i++) {
    run = i > 0 && cuts[i] === cuts[i - 1] ? run + 1 : 1;
    longest = Math.max(longest, run);
  }
  return longest;
}

test('the count is that of all bittings tried one by one, and the nth is the nth of them', () => {
  fc.assert(
    fc.property(smallRules, fc.nat(), (rules, pick) => {
      const all = listed(rules);
      const counted = finish(countingBittings(rules));
      expect(counted.bittings).toBe(BigInt(all.length));
      if (all.length === 0) return;
      const number = pick % all.length;
      expect(counted.nth(BigInt(number))).toEqual(all[number]);
      expect(counted.nth(BigInt(all.length - 1))).toEqual(all[all.length - 1]);
    }),
    { numRuns: 400 },
  );
});

test('the same bittings read from the tip are as many', () => {
  fc.assert(
    fc.property(smallRules, (rules) => {
      const row = <T>(list: readonly T[], empty: T) =>
        Array.from({ length: rules.chambers }, (_, i) => list[rules.chambers - 1 - i] ?? empty);
      const turned = {
        ...rules,
        excluded: row<readonly number[]>(rules.excluded, []),
        parity: row(rules.parity, 'even'),
        master: rules.master && [...rules.master].reverse(),
      };
      expect(finish(countingBittings(turned)).bittings).toBe(finish(countingBittings(rules)).bittings);
    }),
    { numRuns: 100 },
  );
});
