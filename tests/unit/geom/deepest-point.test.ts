import { describe, expect, test } from 'vitest';
import { type ConvexCell, cellHolds, cellOfBox } from '../../../src/geom/convex-cell.ts';
import { deepestPoint, type Walls } from '../../../src/geom/deepest-point.ts';
import { wallsOf } from '../../../src/geom/inscribed-circle.ts';
import type { Point } from '../../../src/geom/point.ts';
import { regionOf } from '../../../src/geom/region.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { squaredDistance } from '../../../src/geom/segment-distance.ts';
import { triangulate } from '../../../src/geom/triangulate.ts';
import { polygonPair } from '../../cases/polygon-pairs.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

const within = (ring: Ring, accuracy: number) => {
  const found = deepestPoint(triangulate(regionOf(ring)), wallsOf(regionOf(ring)), accuracy);
  if (!found) throw new Error('no cells');
  return found;
};

function distanceFrom(walls: Walls, { x, y }: Point): number {
  let least = Infinity;
  for (let i = 0; i < walls.length; i += 4)
    least = Math.min(least, squaredDistance(x, y, walls[i], walls[i + 1], walls[i + 2], walls[i + 3]));
  return Math.sqrt(least);
}

const roundOf = (count: number): Ring =>
  soundRing(
    Array.from({ length: count }, (_, i) => ({
      x: 1e6 * Math.cos((2 * Math.PI * i) / count),
      y: 1e6 * Math.sin((2 * Math.PI * i) / count),
    })),
  );

describe('the deepest point', () => {
  test.each([
    ['a square: half its side', boxOfMm(2, 2), 1e6],
    ['a slot: half its width', boxOfMm(2, 8), 1e6],
    ['a slot a nanometre wide', soundRing([...boxOfMm(1, 1)].map(({ x, y }) => ({ x: x / 1e6, y }))), 0.5],
    [
      'the 3-4-5 triangle: inradius 1',
      ringOfMm([
        [0, 0],
        [4, 0],
        [0, 3],
      ]),
      1e6,
    ],
  ])('of %s', (_, ring, radius) => {
    const found = within(ring, 1);
    expect(found.depth).toBeLessThanOrEqual(radius + 1e-3);
    expect(found.bound).toBeGreaterThanOrEqual(radius - 1e-3);
    expect(found.bound - found.depth).toBeLessThanOrEqual(1);
  });

  test.each([7, 60, 250, 1000])('of a regular polygon of %i sides: its apothem, to the promised accuracy', (count) => {
    const found = within(roundOf(count), 50);
    const apothem = 1e6 * Math.cos(Math.PI / count);
    expect(found.depth).toBeLessThanOrEqual(apothem + 1);
    expect(found.bound).toBeGreaterThanOrEqual(apothem - 1);
    expect(found.bound - found.depth).toBeLessThanOrEqual(50);
  });

  test('of random shapes: the bracket is honest, and no place of a fine grid is deeper', () => {
    for (let seed = 0; seed < 60; seed++) {
      const ring = soundRing(polygonPair(seed).opening.outer);
      const cells = triangulate(regionOf(ring));
      const walls = wallsOf(regionOf(ring));
      const found = deepestPoint(cells, walls, 20);
      if (!found) throw new Error('no cells');
      expect(found.bound - found.depth).toBeLessThanOrEqual(20);
      expect(cells.some((cell) => cellHolds(cell, found.x, found.y))).toBe(true);
      expect(found.depth).toBeCloseTo(distanceFrom(walls, found), 3);
      for (const p of gridOver(ring, 40))
        if (cells.some((cell) => cellHolds(cell, p.x, p.y)))
          expect(distanceFrom(walls, p)).toBeLessThan(found.bound + 1);
    }
  });

  test('only cells are searched: what lies between them does not count', () => {
    const walls = wallsOf(regionOf(boxOfMm(10, 10)));
    const corners: ConvexCell[] = [0, 9e6].map((x) => cellOfBox({ minX: x, minY: 0, maxX: x + 1e6, maxY: 1e6 }));
    const found = deepestPoint(corners, walls, 1);
    expect(found?.depth).toBeCloseTo(1e6, -1);
  });

  test('no cell, no point', () => {
    expect(deepestPoint([], wallsOf(regionOf(boxOfMm(1, 1))), 1)).toBeNull();
  });
});

function gridOver(ring: Ring, count: number): Point[] {
  const xs = ring.map((p) => p.x);
  const ys = ring.map((p) => p.y);
  const place = (values: number[], k: number) =>
    Math.min(...values) + ((Math.max(...values) - Math.min(...values)) * k) / count;
  return Array.from({ length: count * count }, (_, i) => ({
    x: place(xs, i % count),
    y: place(ys, Math.floor(i / count)),
  }));
}
