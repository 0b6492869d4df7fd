import { expect, test } from 'vitest';
import { judgeLikeness, partingOf } from '../../../src/identify/judge-likeness.ts';

const E = 50_000;
const at = (most: number, rms: number) => ({ most: most * E, rms: rms * E });

test.each([
  ['within the error, the next one far off', [at(1.4, 0.5), at(8, 1.6)], 'certain', 1],
  ['alone in the family', [at(1.4, 0.5)], 'certain', 1],
  ['within the error, the next one as close', [at(1.4, 0.5), at(1.6, 0.55), at(8, 2)], 'either', 2],
  ['three as close', [at(1, 0.5), at(1.1, 0.5), at(1.2, 0.52), at(8, 2)], 'either', 3],
  ['the next one parted by more than half the error, less than all of it', [at(1.4, 0.5), at(2.5, 0.9)], 'probable', 1],
  ['a little more off than the error explains', [at(3, 0.9), at(9, 2.5)], 'probable', 1],
  ['just within the error', [at(2, 0.9), at(9, 2.5)], 'certain', 1],
  ['far off, if not in the mean', [at(6.1, 0.9), at(9, 2.5)], 'none', 0],
  ['just not far off', [at(6, 0.9), at(9, 2.5)], 'probable', 1],
  ['one small groove, hardly seen in the mean, parts them', [at(1.2, 0.5), at(6, 0.7)], 'certain', 1],
  [
    'a further one that is worse in the mean, but nowhere far off, is not told apart',
    [at(3, 0.9), at(1.5, 1)],
    'either',
    2,
  ],
  ['nothing to compare with', [], 'none', 0],
] as const)('%s', (_, ranked, likeness, count) => {
  expect(judgeLikeness(ranked, E)).toEqual({ likeness, count });
});

test('a greater error never makes the answer surer about which of two it is', () => {
  const ranked = [at(1, 0.4), at(2.4, 1)];
  const sure = [0.5, 0.7, 1, 1.5, 2, 3, 5].map((times) => judgeLikeness(ranked, times * E).count);
  expect([...sure].sort((a, b) => a - b)).toEqual(sure);
});

test('the parting is that of the two sections: what both have in common does not count', () => {
  // 3, 4 and 5: the noise is 3, the other section 4 away from the first one.
  expect(partingOf({ most: 0, rms: 3 }, { most: 0, rms: 5 })).toBeCloseTo(4, 12);
  expect(partingOf({ most: 10, rms: 3 }, { most: 20, rms: 3 })).toBe(5);
});
