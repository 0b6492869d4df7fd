import { describe, expect, test } from 'vitest';
import { measureInterference } from '../../../src/fit/measure-interference.ts';
import { entersWorn, measureWear } from '../../../src/fit/measure-wear.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { boxOfMm, wardedKeyway } from '../../kit/shapes.ts';

const warded = prepareOpening(wardedKeyway(0.6));
const blade = boxOfMm(2, 8.4);

describe('the wear at which a blocked pair goes in', () => {
  // The ward leaves 1.5 mm for a blade of 2.0 mm: half a millimetre is missing across, a quarter on either side.
  test('is 0.25 mm for either part alone and half of that for both', () => {
    expect(Math.abs(measureWear(warded, blade, 'blank') - 250_000)).toBeLessThan(1_000);
    expect(Math.abs(measureWear(warded, blade, 'keyway') - 250_000)).toBeLessThan(1_000);
    expect(Math.abs(measureWear(warded, blade, 'both') - 125_000)).toBeLessThan(1_000);
  });

  test('of the keyway alone is the interference', () => {
    const { above, atMost } = measureInterference(warded, prepareBlank(blade));
    const wear = measureWear(warded, blade, 'keyway');
    expect(wear).toBeGreaterThan(above - 1_000);
    expect(wear).toBeLessThan(atMost + 1_000);
  });

  test('is nothing where the pair goes in new', () => {
    expect(measureWear(prepareOpening(boxOfMm(2.1, 8.5)), blade, 'both')).toBe(0);
  });

  test('a blank worn away altogether does not count as going in', () => {
    expect(entersWorn(prepareOpening(boxOfMm(0.1, 0.1)), boxOfMm(2, 2), 'blank', 1_100_000)).toBe(false);
  });

  test.each([
    { blank: [0.5, 6], slot: [0.1, 7], worn: 'blank', um: 200 },
    { blank: [0.8, 8.4], slot: [2, 7], worn: 'both', um: 350 },
    { blank: [0.25, 6.45], slot: [2, 6], worn: 'both', um: 112.5 },
  ] as const)('a thin blank goes in shortly before nothing is left of it: $um um', ({ blank, slot, worn, um }) => {
    const wear = measureWear(prepareOpening(boxOfMm(slot[0], slot[1])), boxOfMm(blank[0], blank[1]), worn);
    expect(Math.abs(wear - um * 1e3)).toBeLessThan(1_000);
  });

  test('a web that wears through leaves two parts that must still go in together', () => {
    const low = prepareOpening(boxOfMm(2.1, 4));
    expect(measureWear(low, blade, 'blank')).toBeGreaterThan(900_000);
  });
});
