import { expect, test } from 'vitest';
import { allowedDepths, type BittingRules, ruleFaults, USUAL_RULES } from '../../../src/capacity/bitting-rules.ts';

const faults = (change: Partial<BittingRules>) =>
  ruleFaults({ ...USUAL_RULES, ...change }).map(({ field, what, cure }) => `${field}: ${what}. ${cure}`);

test('the usual rules are sound', () => expect(faults({})).toEqual([]));

test('a master may keep the rules', () =>
  expect(faults({ master: [1, 2, 2, 3, 4, 4], mostAlike: 2, excluded: [[2], [1]] })).toEqual([]));

test.each([
  ['no chamber', { chambers: 0 }, /^chambers: number of chambers: 0\. Give a whole number from 1 to 12\.$/],
  ['half a depth', { depths: 9.5 }, /^depths: .*9\.5.*from 2 to 12/],
  ['a negative maximum', { maximumAdjacent: -1 }, /^maximumAdjacent: /],
  ['no cut alike', { mostAlike: 0 }, /^mostAlike: .*from 1 to 12/],
  ['more different depths than chambers', { leastDifferent: 7 }, /^leastDifferent: .*from 1 to 6/],
  ['a chamber too many', { excluded: [[], [], [], [], [], [], [1]] }, /chamber 7 of 6/],
  ['a depth that there is not', { excluded: [[], [10]] }, /chamber 2 excludes a depth that there is not/],
  ['a short master', { master: [1, 2] }, /top master has 2 cuts for 6 chambers/],
  ['a master too deep', { master: [1, 2, 3, 4, 5, 10] }, /cut 6 of the top master is no depth/],
  ['a depth that there is nowhere', { excluded: Array.from({ length: 6 }, () => [10]) }, /every chamber excludes/],
  [
    'a master on an excluded depth',
    { master: [1, 2, 3, 4, 5, 6], excluded: [[], [2]] },
    /cut 2 of the top master has a/,
  ],
  ['a master too much alike', { master: [1, 2, 2, 2, 3, 4], mostAlike: 2 }, /more than 2 cuts alike in a row/],
  ['a master that cannot be cut', { master: [1, 9, 3, 4, 5, 6] }, /cuts 1 and 2 of the top master are further apart/],
])('%s is told with its field and a cure', (_what, change, words) => {
  expect(faults(change)).toHaveLength(1);
  expect(faults(change)[0]).toMatch(words);
});

test('each chamber has its own depths: without excluded ones, the master and the other parity', () => {
  const rules: BittingRules = { ...USUAL_RULES, chambers: 3, depths: 6, excluded: [[0], [], [1, 3]] };
  expect(allowedDepths(rules)).toEqual([
    [1, 2, 3, 4, 5],
    [0, 1, 2, 3, 4, 5],
    [0, 2, 4, 5],
  ]);
  const twoStep = { ...rules, progression: 'two-step' as const, parity: ['odd' as const] };
  expect(allowedDepths(twoStep)).toEqual([
    [1, 3, 5],
    [0, 2, 4],
    [0, 2, 4],
  ]);
  expect(allowedDepths({ ...twoStep, master: [1, 2, 4] })).toEqual([
    [3, 5],
    [0, 4],
    [0, 2],
  ]);
});
