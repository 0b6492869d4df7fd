import { describe, expect, test } from 'vitest';
import { difference } from '../../../src/geom/clip.ts';
import { inscribedCircle } from '../../../src/geom/inscribed-circle.ts';
import { regionOf } from '../../../src/geom/region.ts';
import { boxOfMm, ringOfMm } from '../../kit/shapes.ts';

describe('the largest circle inside', () => {
  test('of a rectangle touches the long sides', () => {
    const { centre, radius } = inscribedCircle(regionOf(boxOfMm(2, 6)));
    expect(radius).toBeCloseTo(1e6, 0);
    expect(centre.x).toBeCloseTo(1e6, 0);
  });

  test('keeps clear of a hole: in the corner of a frame, (2 - sqrt 2) times the width beside the hole', () => {
    const frame = difference(
      regionOf(boxOfMm(6, 6)),
      regionOf(
        ringOfMm([
          [1.5, 1.5],
          [4.5, 1.5],
          [4.5, 4.5],
          [1.5, 4.5],
        ]),
      ),
    );
    expect(Math.abs(inscribedCircle(frame).radius - 1.5e6 * (2 - Math.SQRT2))).toBeLessThan(1.5);
  });

  test('a region without area has none', () => {
    expect(() => inscribedCircle([])).toThrow(RangeError);
  });
});
