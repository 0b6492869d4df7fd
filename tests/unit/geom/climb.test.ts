import { describe, expect, test } from 'vitest';
import { climb } from '../../../src/geom/climb.ts';
import { wallsOf } from '../../../src/geom/inscribed-circle.ts';
import { regionOf } from '../../../src/geom/region.ts';
import { boxOfMm, ringOfMm } from '../../kit/shapes.ts';

const all = (walls: Float64Array) => Array.from({ length: walls.length / 4 }, (_, i) => i);

describe('climbing away from the walls', () => {
  test('in a triangle one step reaches the centre of the inscribed circle', () => {
    const walls = wallsOf(
      regionOf(
        ringOfMm([
          [0, 0],
          [4, 0],
          [0, 3],
        ]),
      ),
    );
    const top = climb(walls, all(walls), 1.7e6, 0.4e6);
    expect(top?.x).toBeCloseTo(1e6, 3);
    expect(top?.y).toBeCloseTo(1e6, 3);
  });

  test('between two parallel walls it goes half way, and no further', () => {
    const walls = Float64Array.from([0, 40, 0, 0, 20, 0, 20, 40]);
    expect(climb(walls, [0, 1], 3, 25)).toEqual({ x: 10, y: 25 });
  });

  test('from the deepest point there is nowhere to climb', () => {
    const walls = wallsOf(regionOf(boxOfMm(2, 2)));
    expect(climb(walls, all(walls), 1e6, 1e6)).toBeNull();
  });

  test('one wall alone gives no top', () => {
    expect(climb(Float64Array.from([0, 0, 10, 0]), [0], 5, 3)).toBeNull();
  });
});
