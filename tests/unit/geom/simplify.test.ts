import { describe, expect, test } from 'vitest';
import { checkOutline } from '../../../src/geom/check-outline.ts';
import type { Point } from '../../../src/geom/point.ts';
import { squaredDistance } from '../../../src/geom/segment-distance.ts';
import { lightenOutline, simplifyOutline } from '../../../src/geom/simplify.ts';
import { keywayPair } from '../../cases/keyway-pairs.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';

const wheel = (count: number, radius: number): Point[] =>
  Array.from({ length: count }, (_, i) => ({
    x: Math.round(radius * Math.cos((2 * Math.PI * i) / count)),
    y: Math.round(radius * Math.sin((2 * Math.PI * i) / count)),
  }));

/** Greatest distance of a vertex of `points` from the outline `other`. */
function standOff(points: readonly Point[], other: readonly Point[]): number {
  const distances = points.map((p) =>
    Math.min(
      ...other.map((a, i) => {
        const b = other[(i + 1) % other.length];
        return squaredDistance(p.x, p.y, a.x, a.y, b.x, b.y);
      }),
    ),
  );
  return Math.sqrt(Math.max(...distances));
}

describe('a simpler outline', () => {
  test.each([100, 1_000, 20_000])('keeps every vertex within %i nm of it', (tolerance) => {
    const random = randomNumbers(tolerance);
    const jagged = wheel(400, 3e6).map(({ x, y }) => ({
      x: x + random.whole(-900, 900),
      y: y + random.whole(-900, 900),
    }));
    for (const outline of [wheel(1_000, 4e6), jagged, keywayPair(3, 120).blank]) {
      const simpler = simplifyOutline(outline, tolerance);
      expect(simpler.length).toBeLessThanOrEqual(outline.length);
      expect(simpler.every((p) => outline.includes(p))).toBe(true);
      expect(standOff(outline, simpler)).toBeLessThanOrEqual(tolerance + 1e-6);
    }
  });

  test('drops collinear vertices and keeps corners', () => {
    const square = [0, 1, 2, 3].flatMap((side) =>
      Array.from({ length: 5 }, (_, i): Point => {
        const along = i * 200;
        return [
          { x: along, y: 0 },
          { x: 1000, y: along },
          { x: 1000 - along, y: 1000 },
          { x: 0, y: 1000 - along },
        ][side];
      }),
    );
    expect(simplifyOutline(square, 0)).toHaveLength(4);
  });

  test('never fewer than three vertices', () => {
    expect(simplifyOutline(wheel(50, 100), 1e6)).toHaveLength(3);
    const flat = [
      { x: 0, y: 0 },
      { x: 500, y: 1 },
      { x: 1000, y: 0 },
      { x: 500, y: -1 },
    ];
    expect(simplifyOutline(flat, 50)).toHaveLength(3);
  });
});

describe('lightening an outline', () => {
  test('one with few vertices stays as it is', () => {
    const outline = wheel(600, 4e6);
    expect(lightenOutline(outline, 600)).toEqual({ points: outline, within: 0 });
  });

  test('one with many loses as little as it can, says how much, and stays simple', () => {
    const outline = wheel(5_000, 4e6);
    const { points, within } = lightenOutline(outline, 600);
    expect(points.length).toBeLessThanOrEqual(600);
    expect(within).toBeGreaterThan(0);
    expect(within).toBeLessThanOrEqual(1_000);
    expect(standOff(outline, points)).toBeLessThanOrEqual(within);
    expect(checkOutline(points)).toBeNull();
  });

  test('one jagged all over stays as it is rather than lose more', () => {
    const teeth = Array.from({ length: 1_000 }, (_, i) => ({ x: i * 1_000, y: (i % 2) * 50_000 }));
    const outline = [...teeth, { x: 999_000, y: 1e6 }, { x: 0, y: 1e6 }];
    expect(lightenOutline(outline, 600)).toEqual({ points: outline, within: 0 });
  });
});
