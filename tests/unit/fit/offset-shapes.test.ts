import { describe, expect, test } from 'vitest';
import { growOpening, growRegion, OFFSET_ARC, shrinkBlank, shrinkRing } from '../../../src/fit/offset-shapes.ts';
import { boxOf } from '../../../src/geom/point.ts';
import { regionOf } from '../../../src/geom/region.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { areaOfRegion } from '../../kit/regions.ts';
import { boxOfMm, ringOfMm } from '../../kit/shapes.ts';

describe('a blank with something taken off', () => {
  test('nothing off: the very same outline', () => {
    const blade = boxOfMm(2, 8.4);
    expect(shrinkRing(blade, 0)).toEqual([blade]);
  });

  test('a rectangle loses the amount on every side', () => {
    const [worn] = shrinkRing(boxOfMm(2, 8.4), 50_000);
    expect(boxOf(worn)).toEqual({ minX: 50_000, minY: 50_000, maxX: 1_950_000, maxY: 8_350_000 });
    expect(signedArea(worn)).toBe(1.9e6 * 8.3e6);
  });

  test('something put on rounds the corners: area and perimeter times the amount and a disk', () => {
    const [grown] = shrinkRing(boxOfMm(2, 8.4), -50_000);
    const truth = 2e6 * 8.4e6 + 2 * 10.4e6 * 5e4 + Math.PI * 5e4 ** 2;
    expect(signedArea(grown)).toBeLessThanOrEqual(truth + 1e5);
    expect(signedArea(grown)).toBeGreaterThan(truth - 2 * Math.PI * 5e4 * (OFFSET_ARC + 2));
  });

  test('a thin web wears through: two parts', () => {
    const waisted = ringOfMm([
      [0, 0],
      [2, 0],
      [2, 3],
      [1.1, 3],
      [1.1, 5],
      [2, 5],
      [2, 8],
      [0, 8],
      [0, 5],
      [0.9, 5],
      [0.9, 3],
      [0, 3],
    ]);
    expect(shrinkRing(waisted, 90_000)).toHaveLength(1);
    expect(shrinkRing(waisted, 110_000)).toHaveLength(2);
  });

  test('all worn away: nothing, and no blank', () => {
    expect(shrinkRing(boxOfMm(2, 8.4), 1_000_000)).toEqual([]);
    expect(shrinkBlank(boxOfMm(2, 8.4), 1_000_000)).toBeNull();
  });
});

describe('an opening with something added', () => {
  test('grows on every side, and shrinks where the amount is negative', () => {
    const slot = regionOf(boxOfMm(2, 8));
    expect(boxOf(growRegion(slot, 100_000)[0].outer)).toEqual({
      minX: -100_000,
      minY: -100_000,
      maxX: 2_100_000,
      maxY: 8_100_000,
    });
    expect(areaOfRegion(growRegion(slot, -100_000))).toBe(1.8e6 * 7.8e6);
    expect(growRegion(slot, 0)).toBe(slot);
  });

  test('closed up: none', () => {
    expect(growOpening(regionOf(boxOfMm(2, 8)), -1_000_000)).toBeNull();
  });
});
