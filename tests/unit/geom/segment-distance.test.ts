import { describe, expect, test } from 'vitest';
import { nearestOnSegment, squaredDistance } from '../../../src/geom/segment-distance.ts';

const distance = (x: number, y: number) => Math.sqrt(squaredDistance(x, y, 0, 0, 10, 0));

describe('distance from a segment', () => {
  test.each([
    ['beside it: the perpendicular', 4, 3, 3],
    ['beyond its start: the start', -3, 4, 5],
    ['beyond its end: the end', 16, -8, 10],
    ['on it: zero', 7, 0, 0],
    ['in line with it, beyond: to the end', 12, 0, 2],
  ])('%s', (_, x, y, expected) => {
    expect(distance(x, y)).toBe(expected);
  });

  test('a segment without length is a point', () => {
    expect(squaredDistance(3, 4, 0, 0, 0, 0)).toBe(25);
    expect(nearestOnSegment({ x: 3, y: 4 }, { x: 1, y: 1 }, { x: 1, y: 1 })).toEqual({ x: 1, y: 1 });
  });

  test('the nearest point lies on the segment, as far away as the distance says', () => {
    const [a, b] = [
      { x: -3, y: 2 },
      { x: 9, y: 7 },
    ];
    for (const p of [
      { x: 0, y: 0 },
      { x: -20, y: 1 },
      { x: 30, y: 30 },
      { x: 4, y: 9 },
    ]) {
      const q = nearestOnSegment(p, a, b);
      const f = (q.x - a.x) / (b.x - a.x);
      expect(f).toBeGreaterThanOrEqual(0);
      expect(f).toBeLessThanOrEqual(1);
      expect(q.y).toBeCloseTo(a.y + f * (b.y - a.y), 12);
      expect((q.x - p.x) ** 2 + (q.y - p.y) ** 2).toBeCloseTo(squaredDistance(p.x, p.y, a.x, a.y, b.x, b.y), 9);
    }
  });
});
