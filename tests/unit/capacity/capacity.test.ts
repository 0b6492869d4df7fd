import { expect, test } from 'vitest';
import { USUAL_RULES } from '../../../src/capacity/bitting-rules.ts';
import { type Capacity, type CapacityInput, countingCapacity } from '../../../src/capacity/capacity.ts';

function capacity(input: Partial<CapacityInput>): Capacity {
  const steps = countingCapacity({ rules: USUAL_RULES, goesIn: null, ...input });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const threeSections = [
  [true, false, false],
  [false, true, false],
  [false, false, true],
  [true, true, true],
];

test('bittings times the sections that exclude each other', () => {
  const { bittings, without, keys, sections } = capacity({ goesIn: threeSections });
  // Ten depths, six chambers, at most 7 apart: the row of tests/outside/key-changes.test.ts.
  expect([bittings, without, keys]).toEqual([753_754n, 1_000_000n, 2_261_262n]);
  expect(sections?.pairs.length).toBe(3);
  expect(capacity({}).keys).toBe(753_754n);
  expect(capacity({ sections: 12 }).keys).toBe(9_045_048n);
  expect(capacity({ goesIn: [] }).keys).toBe(0n);
});

test('a family whose only blank enters all has one section', () => {
  const { keys, variants } = capacity({ goesIn: [[true, true]] });
  expect(keys).toBe(753_754n);
  expect(variants.filter(({ of }) => of === 'sections').map(({ count }) => count)).toEqual([1, 2]);
});

test('one more and one less of each is the count of that system', () => {
  const { variants } = capacity({ goesIn: threeSections });
  const shown = variants.map(({ of, count, bittings, now }) => [of, count, bittings, now]);
  expect(shown).toEqual([
    ['chambers', 5, 79_666n, false],
    ['chambers', 6, 753_754n, true],
    ['chambers', 7, 7_131_596n, false],
    ['depths', 9, 472_943n, false],
    ['depths', 10, 753_754n, true],
    // 11 depths, 7 apart: recounted by another transfer matrix.
    ['depths', 11, matrixCount(11, 7, 6), false],
    ['sections', 2, 753_754n, false],
    ['sections', 3, 753_754n, true],
    ['sections', 4, 753_754n, false],
  ]);
});

/** 1ᵀ Mⁿ⁻¹ 1, plainly. */
function matrixCount(depths: number, most: number, chambers: number): bigint {
  let ends = Array.from({ length: depths }, () => 1n);
  for (let i = 1; i < chambers; i++)
    ends = ends.map((_, d) => ends.reduce((sum, ways, e) => (Math.abs(d - e) <= most ? sum + ways : sum), 0n));
  return ends.reduce((sum, ways) => sum + ways, 0n);
}

test('under a master a chamber more takes the depth that leaves the most, a depth less only one it does not use', () => {
  const rules = { ...USUAL_RULES, chambers: 3, depths: 4, maximumAdjacent: 1, master: [3, 2, 3] };
  const { variants } = capacity({ rules });
  expect(variants.filter(({ of }) => of === 'depths').map(({ count }) => count)).toEqual([4, 5]);
  const [, now, more] = variants.filter(({ of }) => of === 'chambers');
  expect(more.bittings).toBeGreaterThan(now.bittings);
});

test('a two-step progression grows by the better parity', () => {
  const rules = { ...USUAL_RULES, chambers: 2, depths: 5, maximumAdjacent: null, progression: 'two-step' as const };
  const [, now, more] = capacity({ rules }).variants;
  // Even depths 0, 2, 4 are three, odd ones two.
  expect([now.bittings, more.bittings]).toEqual([9n, 27n]);
});

test('the example is a bitting that keeps the rules; none where there is none', () => {
  expect(capacity({ example: 0n }).example).toEqual([0, 0, 0, 0, 0, 0]);
  expect(capacity({ example: -1n }).example).toEqual([9, 9, 9, 9, 9, 9]);
  expect(capacity({ example: 753_754n }).exampleNumber).toBe(0n);
  const none = capacity({ rules: { ...USUAL_RULES, chambers: 2, depths: 2, excluded: [[0, 1]] } });
  expect([none.bittings, none.keys, none.example]).toEqual([0n, 0n, null]);
});
