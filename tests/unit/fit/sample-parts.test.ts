import { describe, expect, test } from 'vitest';
import { randomFrom, shareOf } from '../../../src/fit/monte-carlo.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { sampleParts } from '../../../src/fit/sample-parts.ts';
import { boxOfMm, wardedKeyway } from '../../kit/shapes.ts';

const blade = boxOfMm(2, 8.4);
const keyway = prepareOpening(boxOfMm(2.1, 8.5));

describe('drawn parts', () => {
  test('the same seed gives the same share, another seed another draw', () => {
    const bands = { blank: 60_000, opening: 60_000 };
    const first = sampleParts(keyway, blade, bands, 4_000, 1);
    expect(sampleParts(keyway, blade, bands, 4_000, 1)).toEqual(first);
    expect(sampleParts(keyway, blade, bands, 4_000, 2).share).not.toBe(first.share);
  });

  test('all go together where the bands fit in the gap, none where a ward is far too deep', () => {
    expect(sampleParts(keyway, blade, { blank: 20_000, opening: 20_000 }, 2_000, 1).share).toBe(1);
    const warded = prepareOpening(wardedKeyway(0.6));
    expect(sampleParts(warded, blade, { blank: 20_000, opening: 20_000 }, 2_000, 1).share).toBe(0);
  });

  test('more draws narrow the interval', () => {
    const few = shareOf(80, 100);
    const many = shareOf(8_000, 10_000);
    expect(many.to - many.from).toBeLessThan((few.to - few.from) / 5);
    expect(few.from).toBeLessThan(0.8);
    expect(few.to).toBeGreaterThan(0.8);
  });

  test('random numbers are even enough: ten bins of a hundred thousand draws', () => {
    const random = randomFrom(7);
    const bins = new Array<number>(10).fill(0);
    for (let i = 0; i < 100_000; i++) bins[Math.floor(random() * 10)]++;
    // Chi-square with 9 degrees of freedom exceeds 27.9 once in a thousand.
    expect(bins.reduce((sum, n) => sum + (n - 10_000) ** 2 / 10_000, 0)).toBeLessThan(27.9);
  });
});
