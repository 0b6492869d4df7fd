import { expect, test } from 'vitest';
import { partOfEdge, pointOnEdge } from '../../../src/geom/point-on-edge.ts';

test('half way along a straight edge and along a half circle', () => {
  expect(pointOnEdge({ x: 0, y: 0 }, { x: 4, y: 2 }, 0.5)).toEqual({ x: 2, y: 1 });
  // To the left on its way: from (0, 0) to (4, 0) a half circle below, its middle at (2, -2).
  const middle = pointOnEdge({ x: 0, y: 0, bulge: 1 }, { x: 4, y: 0 }, 0.5);
  expect(middle.x).toBeCloseTo(2);
  expect(middle.y).toBeCloseTo(-2);
});

test('the nearest part of an edge, held at its ends', () => {
  const [from, to] = [
    { x: 0, y: 0 },
    { x: 4, y: 0 },
  ];
  expect(partOfEdge(from, to, { x: 1, y: 7 })).toBe(0.25);
  expect(partOfEdge(from, to, { x: -3, y: 1 })).toBe(0);
  expect(partOfEdge(from, to, { x: 9, y: 1 })).toBe(1);
  expect(partOfEdge({ ...from, bulge: 1 }, to, { x: 2, y: -9 })).toBeCloseTo(0.5);
  expect(partOfEdge({ ...from, bulge: -1 }, to, { x: 2, y: 9 })).toBeCloseTo(0.5);
  expect(partOfEdge({ ...from, bulge: 1 }, to, { x: 0.5, y: 3 })).toBe(0);
  expect(partOfEdge({ ...from, bulge: 1 }, to, { x: 3.5, y: 3 })).toBe(1);
});
