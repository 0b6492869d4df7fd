import { describe, expect, test } from 'vitest';
import { MAX_COORDINATE } from '../../../src/geom/point.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';

const triangle = [
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 0, y: 3 },
];

describe('signed area', () => {
  test('is positive counter-clockwise and negative clockwise', () => {
    expect(signedArea(triangle)).toBe(6);
    expect(signedArea([...triangle].reverse())).toBe(-6);
  });

  test('does not depend on the first vertex', () => {
    expect(signedArea([triangle[1], triangle[2], triangle[0]])).toBe(6);
  });

  test('keeps every digit of a small outline far from the origin', () => {
    const far = triangle.map(({ x, y }) => ({ x: x + MAX_COORDINATE - 4, y: y - MAX_COORDINATE }));
    expect(signedArea(far)).toBe(6);
  });

  test('a line there and back encloses nothing', () => {
    expect(signedArea([triangle[0], triangle[1], { x: 2, y: 0 }])).toBe(0);
  });
});
