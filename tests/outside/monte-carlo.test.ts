// Outside truth for the draws.
//
// - A stack of four sizes seen as a worked example: 40 +-0.10 less 25 +-0.05, 2 +-0.03 and 10 +-0.05; nominal 3.00, by the
//   root of the sum of squares +-0.126. That contributors drawn evenly leave that band in 7.836 % of cases is arithmetic.
// - Three sizes +-0.05 drawn evenly leave the root-sum-square band +-0.0866 with probability 0.08494: arithmetic.
//
// Closed form: for independent X_i even on [-a_i, a_i], P(sum <= x) = (1 / (n! prod 2 a_i)) times the sum, over all signs
// s, of prod(s_i) * max(0, x + sum s_i a_i)^n: the part of a box below a plane, by inclusion and exclusion.

import { describe, expect, test } from 'vitest';
import { judgeFit } from '../../src/fit/judge-fit.ts';
import { type Bands, judgeTolerance } from '../../src/fit/judge-tolerance.ts';
import { type Random, randomFrom, shareOf } from '../../src/fit/monte-carlo.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import { sampleParts } from '../../src/fit/sample-parts.ts';
import { rectangle } from '../cases/fit-case.ts';
import { ringOf } from '../kit/engines/core-answer.ts';

/** P(sum <= x) for independent quantities even on [-a, a], one `a` for each. */
function probabilityUpTo(x: number, halfWidths: readonly number[]): number {
  let terms = [{ sign: 1, at: x }];
  for (const a of halfWidths)
    terms = terms.flatMap(({ sign, at }) => [
      { sign, at: at + a },
      { sign: -sign, at: at - a },
    ]);
  const n = halfWidths.length;
  const scale = halfWidths.reduce((product, a, i) => product * 2 * a * (i + 1), 1);
  return terms.reduce((sum, { sign, at }) => sum + sign * Math.max(0, at) ** n, 0) / scale;
}

/** Draws the sum of quantities even on [-a, a]. */
const sumOf = (halfWidths: readonly number[]) => (random: Random) =>
  halfWidths.reduce((sum, a) => sum + a * (2 * random() - 1), 0);

const DRAWS = 1_000_000;

/** In how many of `count` draws the sum of quantities even on [-a, a] leaves the band. */
function leavingDraws(halfWidths: readonly number[], band: number, count: number, seed: number): number {
  const random = randomFrom(seed);
  const draw = sumOf(halfWidths);
  let leaving = 0;
  for (let k = 0; k < count; k++) if (Math.abs(draw(random)) > band) leaving++;
  return leaving;
}

describe('the closed form itself', () => {
  test('gives what is known by hand', () => {
    expect(probabilityUpTo(0.5, [1])).toBeCloseTo(0.75, 14);
    expect(probabilityUpTo(0, [1, 3, 0.2])).toBeCloseTo(0.5, 12);
    // Two even quantities: the corner of a rectangle above the line, (1 + 2 - 2)^2 / 2 of 2 * 4.
    expect(probabilityUpTo(2, [1, 2])).toBeCloseTo(1 - 1 / 16, 14);
    // Four of them: P(S <= s) = s^4 / 24 for a sum of four even on [0, 1] while s < 1; here each even on [-1, 1], s = 0.5.
    expect(probabilityUpTo(-3, [1, 1, 1, 1])).toBeCloseTo(0.5 ** 4 / 24, 14);
  });
});

describe('how often a root-sum-square band is left', () => {
  const stacks: [name: string, halfWidths: number[], known: number][] = [
    ['three sizes +-0.05', [0.05, 0.05, 0.05], 0.08494],
    ['40 +-0.10, 25 +-0.05, 2 +-0.03, 10 +-0.05', [0.1, 0.05, 0.03, 0.05], 0.07836],
  ];

  test.each(stacks)('%s', (_, widths, known) => {
    const band = Math.hypot(...widths);
    const exact = 2 * probabilityUpTo(-band, widths);
    expect(exact).toBeCloseTo(known, 5);
    const { from, to } = shareOf(leavingDraws(widths, band, DRAWS, 4), DRAWS);
    expect(from).toBeLessThanOrEqual(exact);
    expect(to).toBeGreaterThanOrEqual(exact);
  });

  test('the stated 95 % interval holds the exact share in about 95 of 100 repetitions', () => {
    const [, widths] = stacks[0];
    const band = Math.hypot(...widths);
    const exact = 2 * probabilityUpTo(-band, widths);
    let held = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const { from, to } = shareOf(leavingDraws(widths, band, 2_000, seed), 2_000);
      if (from <= exact && exact <= to) held++;
    }
    // 380 expected, standard deviation 4.4.
    expect(held).toBeGreaterThan(362);
    expect(held).toBeLessThan(397);
  });
});

/** A tongue 2 mm wide in a slot with a gap of `gap` nm on each side (below zero: overlap) and plenty of height. */
function slotAndTongue(gap: number) {
  const opening = prepareOpening(ringOf(rectangle(-1_000_000 - gap, 0, 2_000_000 + 2 * gap, 10_000_000)));
  return { opening, tongue: ringOf(rectangle(-1_000_000, 0, 2_000_000, 8_000_000)) };
}

/**
 * The share of pairs that go together when each outline deviates evenly within its band: the tongue grows by b on each
 * face, the slot by o, and they go together exactly when gap + o - b >= 0, that is when b - o <= gap.
 */
const exactShare = (gap: number, { blank, opening }: Bands) =>
  probabilityUpTo(
    gap,
    [blank, opening].filter((band) => band > 0),
  );

describe('drawn parts: a tongue in a slot against the exact share', () => {
  const COUNT = 20_000;
  const cases: [gapUm: number, blankUm: number, openingUm: number][] = [
    [25, 20, 20],
    [10, 20, 20],
    [0, 20, 20],
    [-15, 20, 20],
    [5, 30, 10],
    [5, 10, 30],
    [-12, 4, 12],
    [6, 0, 20],
    [6, 20, 0],
  ];

  test.each(cases)('gap %i um, tongue within %i um, slot within %i um', (gap, blank, open) => {
    const bands = { blank: blank * 1000, opening: open * 1000 };
    const { opening, tongue } = slotAndTongue(gap * 1000);
    const exact = exactShare(gap * 1000, bands);
    expect(exact).toBeGreaterThan(0);
    expect(exact).toBeLessThan(1);
    const shares = Array.from({ length: 12 }, (_, seed) => sampleParts(opening, tongue, bands, COUNT, seed + 1));
    const held = shares.filter(({ from, to }) => from <= exact && exact <= to).length;
    // 11.4 of 12 expected; 8 or fewer would happen once in 3,000 times if the intervals were right.
    expect(held, shares.map(({ share }) => share.toFixed(4)).join(' ')).toBeGreaterThan(8);
    for (const { share } of shares) expect(Math.abs(share - exact)).toBeLessThan(0.02);
  });

  test('a hand-worked share: gap 10, both within 20 um: 1 - (20 + 20 - 10)^2 / 2 / 40^2 = 0.71875', () => {
    expect(exactShare(10, { blank: 20, opening: 20 })).toBeCloseTo(0.71875, 12);
    const { opening, tongue } = slotAndTongue(10_000);
    const { from, to } = sampleParts(opening, tongue, { blank: 20_000, opening: 20_000 }, COUNT, 7);
    expect(from).toBeLessThanOrEqual(0.71875);
    expect(to).toBeGreaterThanOrEqual(0.71875);
  });

  test('all go together where the answer is always, none where it is never', () => {
    const bands = { blank: 20_000, opening: 15_000 };
    for (const [gap, word, share] of [
      [35_500, 'always', 1],
      [-35_500, 'never', 0],
    ] as const) {
      const { opening, tongue } = slotAndTongue(gap);
      const fit = judgeFit(opening, prepareBlank(tongue), 0);
      expect(judgeTolerance(opening, [tongue], fit, bands)).toBe(word);
      expect(sampleParts(opening, tongue, bands, COUNT, 5).share).toBe(share);
    }
  });

  test('the same seed gives the same draw, another seed another', () => {
    const { opening, tongue } = slotAndTongue(5_000);
    const draw = (seed: number) => sampleParts(opening, tongue, { blank: 20_000, opening: 20_000 }, 2_000, seed);
    expect(draw(9)).toEqual(draw(9));
    expect(draw(9)).not.toEqual(draw(10));
  });
});
