import { expect, test } from 'vitest';
import { difference } from '../../../src/geom/clip.ts';
import { regionOf } from '../../../src/geom/region.ts';
import { overlapMeter } from '../../../src/passage/overlap-area.ts';
import { largestArea, moveRegion, share } from '../../../src/passage/overlap-regions.ts';
import { polygonPair } from '../../cases/polygon-pairs.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

/*
 * Closed forms: rectangles laid on each other. And clipper-lib (through geom/clip.ts) as the measure of any overlap.
 */

const MM = 1e6;
const MM2 = 1e12;

/** Half a nanometre along a boundary of 40 mm, square millimetres. */
const DIGITS = 4;

test('rectangles share a rectangle, wherever the second one is moved', () => {
  const areaAt = overlapMeter(regionOf(boxOfMm(2, 8)), regionOf(boxOfMm(3, 5)));
  const [x, y] = [0.7, 1.3];
  expect(areaAt({ x: x * MM, y: y * MM }) / MM2).toBeCloseTo((2 - x) * 5, DIGITS);
  expect(areaAt({ x: -2.5 * MM, y: 4 * MM }) / MM2).toBeCloseTo(0.5 * 4, DIGITS);
  expect(areaAt({ x: 0, y: 0 }) / MM2).toBeCloseTo(2 * 5, DIGITS);
  expect(areaAt({ x: 30 * MM, y: 0 })).toBe(0);
});

test('of several shared parts the largest counts, not their sum', () => {
  const fork = ringOfMm([
    [0, 0],
    [6, 0],
    [6, 8],
    [5, 8],
    [5, 1],
    [2, 1],
    [2, 8],
    [0, 8],
  ]);
  const bar = regionOf(boxOfMm(8, 1));
  const areaAt = overlapMeter(regionOf(fork), bar);
  expect(areaAt({ x: -1 * MM, y: 4 * MM }) / MM2).toBeCloseTo(2, DIGITS);
  expect(areaAt({ x: 1.5 * MM, y: 4 * MM }) / MM2).toBeCloseTo(1, DIGITS);
  // Half in the bridge: both prongs hang together again.
  expect(areaAt({ x: -1 * MM, y: 0.5 * MM }) / MM2).toBeCloseTo(6 * 0.5 + 3 * 0.5, DIGITS);
});

test('a hole is taken off', () => {
  const frame = difference(regionOf(boxOfMm(6, 6)), moveRegion(regionOf(boxOfMm(2, 2)), { x: 2 * MM, y: 2 * MM }));
  expect(overlapMeter(frame, regionOf(boxOfMm(9, 9)))({ x: -1 * MM, y: -1 * MM }) / MM2).toBeCloseTo(32, DIGITS);
  expect(overlapMeter(frame, regionOf(boxOfMm(9, 4)))({ x: -1 * MM, y: 0 }) / MM2).toBeCloseTo(20, DIGITS);
});

test('jagged polygons at two hundred places each agree with clipping', () => {
  const random = randomNumbers(11);
  let parted = 0;
  for (let seed = 0; seed < 10; seed++) {
    const still = regionOf(soundRing(polygonPair(seed).opening.outer));
    const moving = regionOf(soundRing(polygonPair(seed + 50).opening.outer));
    const areaAt = overlapMeter(still, moving);
    for (let n = 0; n < 200; n++) {
      const move = { x: random.whole(-3_000, 3_000) * 1_000, y: random.whole(-3_000, 3_000) * 1_000 };
      const clipped = share(still, moveRegion(moving, move));
      if (clipped.length > 1) parted++;
      expect(Math.abs(areaAt(move) - largestArea(clipped)), `${seed} ${n}`).toBeLessThan(1e8);
    }
  }
  expect(parted).toBeGreaterThan(20);
});
