import { expect, test } from 'vitest';
import { findCrossings } from '../../../src/geom/find-crossings.ts';
import type { Vertex } from '../../../src/geom/vertex.ts';

const MM = 1e6;
const at = (x: number, y: number, bulge?: number): Vertex =>
  bulge === undefined ? { x: x * MM, y: y * MM } : { x: x * MM, y: y * MM, bulge };

test('a simple outline has none, with arcs too', () => {
  expect(findCrossings([at(0, 0), at(2, 0), at(2, 6), at(0, 6)])).toEqual([]);
  expect(findCrossings([at(0, 0), at(2, 0, 1), at(2, 6), at(0, 6)])).toEqual([]);
});

test('a five-pointed star has its five inner corners', () => {
  const tip = (k: number) => at(3 * Math.cos((k * 4 * Math.PI) / 5), 3 * Math.sin((k * 4 * Math.PI) / 5));
  const places = findCrossings([0, 1, 2, 3, 4].map(tip));
  expect(places).toHaveLength(5);
  // Inner corners of a pentagram lie at the outer radius over the square of the golden ratio.
  const golden = (1 + Math.sqrt(5)) / 2;
  for (const { x, y } of places) expect(Math.hypot(x, y)).toBeCloseTo((3 * MM) / golden ** 2, -1);
});

test('touching, standing on an edge and running back are told at their places', () => {
  expect(findCrossings([at(0, 0), at(4, 0), at(4, 4), at(2, 0), at(0, 4)])).toEqual([at(2, 0)]);
  expect(findCrossings([at(0, 0), at(4, 0), at(2, 0), at(2, 4)])).toContainEqual(at(2, 0));
});

test('an arc that swings over another edge crosses it where the circle does', () => {
  // A half circle about (2, 3) with radius 3 from (2, 0), bowing to the left, meets x = 0 at y = 3 -+ sqrt(5).
  const places = findCrossings([at(0, 0), at(2, 0, -1), at(2, 6), at(0, 6)]);
  expect(places.map(({ y }) => y / MM).sort((a, b) => a - b)).toEqual([
    expect.closeTo(3 - Math.sqrt(5), 2),
    expect.closeTo(3 + Math.sqrt(5), 2),
  ]);
});

test('an open line is not joined to its first vertex', () => {
  const hook = [at(0, 0), at(4, 0), at(4, 2), at(-2, 3), at(2, 1)];
  expect(findCrossings(hook, false)).toEqual([]);
  const cut = [at(0, 0), at(4, 0), at(4, 2), at(2, -1)];
  expect(findCrossings(cut, false)).toHaveLength(1);
  expect(findCrossings([at(0, 0)], false)).toEqual([]);
  expect(findCrossings([], true)).toEqual([]);
});
