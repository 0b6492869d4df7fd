import { expect, test } from 'vitest';
import { leftAt, rightAt, trapezoidsOf } from '../../../src/gauge/trapezoids.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { polygonPair } from '../../cases/polygon-pairs.ts';
import { ringOfMm } from '../../kit/shapes.ts';

test('the parts have the area of the outline, whatever its shape', () => {
  for (let seed = 0; seed < 40; seed++) {
    const { outer } = polygonPair(seed).opening;
    const area = trapezoidsOf(outer).reduce(
      (sum, { low, high, left0, left1, right0, right1 }) =>
        sum + ((high - low) * (right0 - left0 + right1 - left1)) / 2,
      0,
    );
    expect(area / Math.abs(signedArea(outer))).toBeCloseTo(1, 9);
  }
});

test('a part knows what stands on it, and where its walls are', () => {
  const fork = ringOfMm([
    [0, 0],
    [3, 0],
    [3, 4],
    [2, 4],
    [2, 1],
    [1, 1],
    [1, 4],
    [0, 4],
  ]);
  const [base, ...legs] = trapezoidsOf(fork);
  expect(base.above).toEqual(legs);
  expect(legs.map((leg) => [leftAt(leg, 2e6), rightAt(leg, 2e6)])).toEqual([
    [0, 1e6],
    [2e6, 3e6],
  ]);
});
