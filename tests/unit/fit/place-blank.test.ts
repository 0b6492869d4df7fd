import { describe, expect, test } from 'vitest';
import { placeBlank } from '../../../src/fit/place-blank.ts';
import { boxOfMm } from '../../kit/shapes.ts';

const blade = boxOfMm(2, 8.4);

describe('placing a blank', () => {
  test('upright it is moved and nothing else', () => {
    expect(placeBlank(blade, { x: 10, y: -5, tilt: 0 })).toEqual(blade.map(({ x, y }) => ({ x: x + 10, y: y - 5 })));
  });

  test('it is turned about its own origin first: a quarter turn puts right up', () => {
    const [origin, right] = placeBlank(blade, { x: 100, y: 7, tilt: Math.PI / 2 });
    expect(origin.x).toBeCloseTo(100, 9);
    expect(origin.y).toBeCloseTo(7, 9);
    expect(right.x).toBeCloseTo(100, 6);
    expect(right.y).toBeCloseTo(2e6 + 7, 6);
  });
});
