import { describe, expect, test } from 'vitest';
import { sideOf, sideOfRegion } from '../../../src/geom/contains-point.ts';
import { MAX_COORDINATE } from '../../../src/geom/point.ts';
import type { Region } from '../../../src/geom/region.ts';
import { ringOfMm } from '../../kit/shapes.ts';

const mm = (x: number, y: number) => ({ x: x * 1e6, y: y * 1e6 });
/** An M: two teeth and a vertex level with others, so that rays run through vertices. */
const teeth = ringOfMm([
  [0, 0],
  [8, 0],
  [8, 4],
  [6, 2],
  [4, 4],
  [2, 2],
  [0, 4],
]);

describe('where a point lies', () => {
  test.each([
    ['in a tooth', 1, 2.5, 'inside'],
    ['between the teeth', 2, 3, 'outside'],
    ['level with inner vertices, left of all', -1, 2, 'outside'],
    ['level with inner vertices, inside', 4, 2, 'inside'],
    ['level with the tips, outside', 5, 4, 'outside'],
    ['level with the bottom edge, beyond it', 9, 0, 'outside'],
    ['on a vertex', 6, 2, 'edge'],
    ['on a slanted edge', 7, 3, 'edge'],
    ['on a level edge', 3, 0, 'edge'],
    ['on an upright edge', 8, 1, 'edge'],
  ] as const)('%s', (_, x, y, expected) => {
    expect(sideOf([teeth], mm(x, y))).toBe(expected);
    expect(sideOf([[...teeth].reverse()], mm(x, y))).toBe(expected);
  });

  test('one nanometre either side of a slanted edge', () => {
    expect(sideOf([teeth], { x: 7e6, y: 3e6 - 1 })).toBe('inside');
    expect(sideOf([teeth], { x: 7e6, y: 3e6 + 1 })).toBe('outside');
  });

  test('exact on an edge right across the accepted square', () => {
    const M = MAX_COORDINATE;
    const half = [
      { x: -M, y: -M },
      { x: M, y: -M },
      { x: M, y: M },
    ];
    expect(sideOf([half], { x: 31_415_926, y: 31_415_926 })).toBe('edge');
    expect(sideOf([half], { x: 31_415_926, y: 31_415_925 })).toBe('inside');
    expect(sideOf([half], { x: 31_415_926, y: 31_415_927 })).toBe('outside');
  });

  test('an island is outside, its shore is edge', () => {
    const outer = ringOfMm([
      [0, 0],
      [9, 0],
      [9, 9],
      [0, 9],
    ]);
    const island = ringOfMm([
      [3, 3],
      [6, 3],
      [6, 6],
      [3, 6],
    ]);
    const region: Region = [{ outer, holes: [[...island].reverse()] }];
    expect(sideOfRegion(region, mm(1, 4))).toBe('inside');
    expect(sideOfRegion(region, mm(4, 4))).toBe('outside');
    expect(sideOfRegion(region, mm(3, 4))).toBe('edge');
  });
});
