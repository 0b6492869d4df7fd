import { describe, expect, test } from 'vitest';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { subtractWindows } from '../../../src/fit/subtract-windows.ts';
import { innerFitByParts, shrink } from '../../../src/fit/sum-parts.ts';
import { difference } from '../../../src/geom/clip.ts';
import { areaOf } from '../../../src/geom/convex-cell.ts';
import { regionOf } from '../../../src/geom/region.ts';
import { keywayPair } from '../../cases/keyway-pairs.ts';
import { polygonPair } from '../../cases/polygon-pairs.ts';
import { areaOfRegion } from '../../kit/regions.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

const MM2 = 1e12;

describe('the inner-fit region by convex parts', () => {
  test('of a rectangle in a rectangle is the rectangle of the differences', () => {
    expect(areaOfRegion(innerFitByParts(regionOf(boxOfMm(2.1, 8.5)), [boxOfMm(2, 8.2)]))).toBe(0.03 * MM2);
  });

  test('has a hole round an island', () => {
    const opening = difference(
      regionOf(boxOfMm(6, 6)),
      regionOf(
        ringOfMm([
          [2.5, 2.5],
          [3.5, 2.5],
          [3.5, 3.5],
          [2.5, 3.5],
        ]),
      ),
    );
    const region = innerFitByParts(opening, [boxOfMm(1, 1)]);
    expect(region[0].holes).toHaveLength(1);
    expect(areaOfRegion(region)).toBe(21 * MM2);
  });

  test('is empty where the blank is larger, and where it only just touches: contact has no area', () => {
    expect(innerFitByParts(regionOf(boxOfMm(2, 8)), [boxOfMm(3, 3)])).toEqual([]);
    expect(innerFitByParts(regionOf(boxOfMm(2, 8)), [boxOfMm(2, 3)])).toEqual([]);
  });

  test('has the area that window subtraction finds, to a few nanometres along its edges', () => {
    let fitting = 0;
    for (let seed = 0; seed < 25; seed++)
      for (const pair of [keywayPair(seed, 20), polygonPair(seed)]) {
        const [ring, blade] = [soundRing(pair.opening.outer), soundRing(pair.blank)];
        const cells = subtractWindows(prepareOpening(ring), prepareBlank(blade));
        const direct = cells.reduce((sum, cell) => sum + areaOf(cell), 0);
        const other = areaOfRegion(innerFitByParts(regionOf(ring), [blade]));
        if (direct > 0) fitting++;
        expect(Math.abs(direct - other)).toBeLessThan(3 * 4 * Math.sqrt(Math.max(direct, other)) + 1e-4 * direct + 1e6);
      }
    expect(fitting).toBeGreaterThan(15);
  });
});

describe('shrinking a region', () => {
  test('by nothing leaves it, by half its width empties it', () => {
    const slot = regionOf(boxOfMm(2, 8));
    expect(shrink(slot, 0)).toBe(slot);
    expect(areaOfRegion(shrink(slot, 500_000))).toBe(7 * MM2);
    expect(shrink(slot, 1_000_000)).toEqual([]);
  });
});
