import { describe, expect, test } from 'vitest';
import { boxOf, MAX_COORDINATE, NM_PER_INCH, NM_PER_MM, NM_PER_UM, translatePoints } from '../../../src/geom/point.ts';

describe('points', () => {
  test('the box is the smallest round all of them', () => {
    const points = [
      { x: 3, y: -7 },
      { x: -2, y: 5 },
      { x: 0, y: 0 },
    ];
    expect(boxOf(points)).toEqual({ minX: -2, minY: -7, maxX: 3, maxY: 5 });
  });

  test('moving adds to every point and leaves the given ones alone', () => {
    const points = [{ x: 1, y: 2 }];
    expect(translatePoints(points, { x: 10, y: -1 })).toEqual([{ x: 11, y: 1 }]);
    expect(points).toEqual([{ x: 1, y: 2 }]);
  });

  test('units are exact: an inch is 25.4 mm (international yard and pound agreement, 1959)', () => {
    expect(NM_PER_INCH).toBe(25.4 * NM_PER_MM);
    expect(NM_PER_MM).toBe(1000 * NM_PER_UM);
  });

  test('a product of two differences of accepted coordinates is an exact double', () => {
    expect((2 * MAX_COORDINATE) ** 2).toBeLessThan(Number.MAX_SAFE_INTEGER);
  });
});
