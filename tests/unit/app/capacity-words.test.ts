import { expect, test } from 'vitest';
import { capacityChart } from '../../../src/app/state/plan/capacity/capacity-chart.ts';
import {
  addedChamberText,
  bittingText,
  capacityHeadline,
  countText,
  factorText,
  growthSentences,
  keptText,
  readCuts,
  rulesText,
  variantName,
} from '../../../src/app/state/plan/capacity/capacity-words.ts';
import { USUAL_RULES } from '../../../src/capacity/bitting-rules.ts';
import { type Capacity, countingCapacity } from '../../../src/capacity/capacity.ts';

/** With spaces that break. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

function capacity(change: Partial<typeof USUAL_RULES> = {}, sections = 10): Capacity {
  const steps = countingCapacity({ rules: { ...USUAL_RULES, ...change }, goesIn: null, sections });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

test('numbers are parted in threes, however large', () => {
  expect([0, 999, 1000].map((n) => plain(countText(n)))).toEqual(['0', '999', '1 000']);
  expect(plain(countText(12n ** 12n * 1000n))).toBe('8 916 100 448 256 000');
});

test('what a chamber that is added takes is said where it is chosen', () => {
  expect(addedChamberText(USUAL_RULES)).toBe('');
  expect(addedChamberText({ ...USUAL_RULES, progression: 'two-step' })).toMatch(/parity that leaves the most/);
  expect(addedChamberText({ ...USUAL_RULES, master: [1, 2, 3, 4, 5, 6] })).toMatch(/top master that leaves the most/);
});

test('the headline multiplies, the line under it says what the rules leave', () => {
  const counted = capacity();
  expect(plain(capacityHeadline(counted))).toBe('753 754 bittings × 10 sections = 7 537 540 key changes');
  expect(plain(keptText(counted))).toBe('Of 1 000 000 bittings 75.4 % keep the rules.');
  expect(plain(keptText(capacity({ maximumAdjacent: null })))).toBe(
    'Every one of the 1 000 000 bittings keeps the rules.',
  );
});

test('what one more brings is told by number and by factor', () => {
  const [section, chamber, depth] = growthSentences(capacity()).map(plain);
  expect(section).toBe('One section more adds 753 754 keys, and leaves every cylinder there is as it is.');
  expect(chamber).toMatch(/^One chamber more brings 9\.46 times as many \(63 778 420 more\)/);
  expect(depth).toMatch(/^One depth more brings 1\.47 times as many/);
  expect(growthSentences(capacity({ excluded: [[0, 1, 2, 3, 4, 5, 6, 7, 8, 9]] }))).toEqual([]);
});

test('the chart stands on powers of ten that hold all of it', () => {
  const counted = capacity();
  const { rows, lines } = capacityChart(counted);
  expect(rows.length).toBe(9);
  for (const { share } of rows) expect(share > 0 && share < 1).toBe(true);
  expect(lines.map(({ power }) => power)).toEqual([5, 6, 7, 8]);
  const seven = rows.find(({ variant }) => variant.of === 'chambers' && variant.count === 7);
  // log10 of 71 315 960 between 5 and 8.
  expect(seven?.share).toBeCloseTo((Math.log10(71_315_960) - 5) / 3, 6);
  // Nothing is left of the first chamber, until there is a depth more.
  const none = capacityChart(capacity({ excluded: [[0, 1, 2, 3, 4, 5, 6, 7, 8, 9]] }));
  expect(none.rows.map(({ variant }) => variantName(variant))).toEqual(['11 depths']);
});

test('names, factors, rules and cuts as they are written', () => {
  const { variants, keys } = capacity();
  expect(variants.map(variantName).slice(0, 3)).toEqual(['5 chambers', '6 chambers', '7 chambers']);
  expect(variants.map((variant) => factorText(variant, keys)).slice(0, 3)).toEqual(['× 0.11', '', '× 9.46']);
  expect(bittingText([4, 1, 6], 1)).toBe('5 2 7');
  expect(rulesText({ ...USUAL_RULES, master: [5, 2, 7, 4, 1, 8], mostAlike: 2 }, 0)).toBe(
    '6 chambers, depths 0 to 9; MACS 7; at most 2 alike in a row; one-step; under the top master 5 2 7 4 1 8',
  );
  expect(readCuts('5,2 7;4', 1)).toEqual({ ok: true, cuts: [4, 1, 6, 3] });
  expect(readCuts('0 1', 1)).toMatchObject({ ok: false, words: 'Depths begin at 1.' });
  expect(readCuts('five', 0).ok).toBe(false);
});
