import { expect, test } from 'vitest';
import { type BittingRules, USUAL_RULES } from '../../../src/capacity/bitting-rules.ts';
import { type Capacity, countingCapacity } from '../../../src/capacity/capacity.ts';
import { whyNoneWords } from '../../../src/capacity/why-none-words.ts';

const FEW: BittingRules = { ...USUAL_RULES, chambers: 4, depths: 4, maximumAdjacent: null };

function counted(change: Partial<BittingRules>): Capacity {
  const steps = countingCapacity({ rules: { ...FEW, ...change }, goesIn: null });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

function words(change: Partial<BittingRules>, firstDepth = 0): string[] | null {
  const { whyNone, bittings } = counted(change);
  expect(bittings).toBe(0n);
  return whyNone && whyNoneWords({ ...FEW, ...change }, whyNone, firstDepth);
}

test('where there are bittings there is nothing to say', () => {
  expect(counted({}).whyNone).toBeNull();
});

test('a chamber that is emptied is named, with what took each of its depths', () => {
  // Chamber 3: 0 is excluded, 1 is the master's, 3 too; even depths only are left by the master's parity: odd.
  expect(words({ excluded: [[], [], [3]], progression: 'two-step', master: [0, 2, 1, 0] })).toEqual([
    'Chamber 3 has no depth left: excluded is 3, the top master has 1, of the other parity are 0 2.',
    'There would be some without the excluded depths, or without the two-step progression, or without the top master.',
  ]);
});

test('a chamber that no cut before it allows is named', () => {
  // Depths are written from 1: 0 in chambers 1 and 2, then 3 only.
  expect(
    words(
      {
        excluded: [
          [1, 2, 3],
          [1, 2, 3],
          [0, 1, 2],
        ],
        maximumAdjacent: 2,
      },
      1,
    ),
  ).toEqual([
    'No depth of chamber 3 may stand after a cut that chambers 1 to 2 can have.',
    'There would be some without the maximum adjacent cut, or without the excluded depths.',
  ]);
});

test('too few different depths, and rules that only together leave nothing', () => {
  const one = [1, 2, 3];
  expect(words({ excluded: [one, one, one, one], leastDifferent: 2 })?.[0]).toBe('No key has 2 different depths.');
  const both = words({ excluded: [one, one, one, one], leastDifferent: 2, mostAlike: 3 });
  expect(both?.[1]).toBe('There would be some without the excluded depths.');
  const many = words({
    depths: 2,
    chambers: 4,
    excluded: [[1], [1], [1], [1]],
    mostAlike: 1,
    leastDifferent: 2,
    master: [0, 1, 1, 1],
  });
  expect(many?.[1]).toBe('No one rule alone is the cause: loosen several of them.');
});
