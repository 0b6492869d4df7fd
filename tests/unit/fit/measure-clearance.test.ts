import { describe, expect, test } from 'vitest';
import { CLEARANCE_ACCURACY, measureClearance } from '../../../src/fit/measure-clearance.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { subtractWindows } from '../../../src/fit/subtract-windows.ts';
import type { Region } from '../../../src/geom/region.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { keywayPair } from '../../cases/keyway-pairs.ts';
import { polygonPair } from '../../cases/polygon-pairs.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

function measured(opening: Ring | Region, blank: Ring, accuracy = CLEARANCE_ACCURACY) {
  const [o, b] = [prepareOpening(opening), prepareBlank(blank)];
  return measureClearance(o, b, subtractWindows(o, b), accuracy);
}

const regular = (count: number, radius: number): Ring =>
  soundRing(
    Array.from({ length: count }, (_, i) => ({
      x: radius * Math.cos((2 * Math.PI * i) / count),
      y: radius * Math.sin((2 * Math.PI * i) / count),
    })),
  );

const ell = ringOfMm([
  [0, 0],
  [6, 0],
  [6, 1.5],
  [1.5, 1.5],
  [1.5, 6],
  [0, 6],
]);

describe('the clearance', () => {
  test.each([
    ['a rectangle in a rectangle: half the lesser difference', boxOfMm(2.1, 8.6), boxOfMm(2, 8.4), 50_000],
    ['half a nanometre', boxOfMm(2.000001, 8.5), boxOfMm(2, 8.4), 0.5],
    ['a square in an L: the circle in the knee, diameter 4 - 2 sqrt 2', ell, boxOfMm(0.5, 0.5), (2 - Math.SQRT2) * 1e6],
    ['a hexagon in a hexagon: the difference of the apothems', regular(6, 4e6), regular(6, 3e6), 5e5 * Math.sqrt(3)],
    ['many sides', regular(250, 4e6), regular(250, 3.9e6), 1e5 * Math.cos(Math.PI / 250)],
  ])('%s', (_, opening, blank, truth) => {
    const { depth, bound } = measured(opening, blank);
    expect(depth).toBeLessThanOrEqual(truth + 1.5);
    expect(bound).toBeGreaterThanOrEqual(truth - 1.5);
    expect(bound - depth).toBeLessThanOrEqual(CLEARANCE_ACCURACY + 1);
  });

  test('is as close as it is asked to be', () => {
    for (const accuracy of [1000, 50, 5, 0.5]) {
      const { depth, bound } = measured(ell, boxOfMm(0.5, 0.5), accuracy);
      expect(bound - depth).toBeLessThanOrEqual(accuracy + 1);
      expect(depth).toBeGreaterThanOrEqual((2 - Math.SQRT2) * 1e6 - accuracy - 1);
    }
  });

  test('keeps its promised accuracy on random pairs, keyways and others', () => {
    let fitting = 0;
    for (let seed = 0; seed < 400; seed++)
      for (const { opening, blank } of [polygonPair(seed), keywayPair(seed, 60)]) {
        const [o, b] = [prepareOpening(soundRing(opening.outer)), prepareBlank(soundRing(blank))];
        const cells = subtractWindows(o, b);
        if (cells.length === 0) continue;
        fitting++;
        const { depth, bound } = measureClearance(o, b, cells);
        expect(bound - depth).toBeLessThanOrEqual(CLEARANCE_ACCURACY + 1);
      }
    expect(fitting).toBeGreaterThan(250);
  });

  test('a blank between two long walls is laid in the middle of its play, upwards too', () => {
    const { x, y } = measured(boxOfMm(2.1, 9), boxOfMm(2, 8.4));
    expect(x).toBeCloseTo(50_000, 0);
    expect(y).toBeCloseTo(300_000, 0);
  });

  test('the better of two chambers is taken', () => {
    const opening = ringOfMm([
      [0, 0],
      [3, 0],
      [3, 1],
      [5, 1],
      [5, 0],
      [9, 0],
      [9, 3.2],
      [5, 3.2],
      [5, 2],
      [3, 2],
      [3, 3],
      [0, 3],
    ]);
    const { depth, x } = measured(opening, boxOfMm(2, 2));
    expect(depth).toBeCloseTo(600_000, -2);
    expect(x).toBeGreaterThan(5e6);
  });

  test('no cell, no clearance: a mistake of the caller', () => {
    const [o, b] = [prepareOpening(boxOfMm(1, 1)), prepareBlank(boxOfMm(2, 2))];
    expect(() => measureClearance(o, b, [])).toThrow(RangeError);
  });
});
