import { describe, expect, test } from 'vitest';
import { CHORD_ERROR, type Corner, crampedEdges, roundCorners } from '../../../src/profile/round-corners.ts';

const square = (radius: number, side = 1e6): Corner[] =>
  [
    { x: 0, y: 0 },
    { x: side, y: 0 },
    { x: side, y: side },
    { x: 0, y: side },
  ].map((at) => ({ at, radius }));

describe('rounding corners', () => {
  test('radius 0 leaves the outline as it is', () => {
    expect(roundCorners(square(0))).toEqual(square(0).map((c) => c.at));
  });

  test('half the side as radius makes a circle: no vertex or chord off it by more than stated', () => {
    const r = 5e5;
    const points = roundCorners(square(r));
    points.forEach((p, i) => {
      const q = points[(i + 1) % points.length];
      expect(Math.abs(Math.hypot(p.x - r, p.y - r) - r)).toBeLessThan(0.71);
      const sag = r - Math.hypot((p.x + q.x) / 2 - r, (p.y + q.y) / 2 - r);
      expect(sag).toBeLessThan(CHORD_ERROR + 1);
    });
    expect(crampedEdges(square(r))).toEqual([]);
  });

  test('an arc smaller than the chord error is one chord', () => {
    expect(roundCorners(square(500))).toHaveLength(8);
  });

  test('edges too short for their arcs are named with what they need', () => {
    expect(crampedEdges(square(6e5))).toHaveLength(4);
    const [edge] = crampedEdges(square(6e5));
    expect(edge.from).toBe(0);
    expect(edge.length).toBe(1e6);
    expect(edge.needed).toBeCloseTo(1.2e6, 3);
  });

  test('an inward corner is filled, an outward corner is cut', () => {
    const corners: Corner[] = [
      [0, 0],
      [2e6, 0],
      [2e6, 2e6],
      [1e6, 2e6],
      [1e6, 1e6],
      [0, 1e6],
    ].map(([x, y]) => ({ at: { x, y }, radius: x === 1e6 && y === 1e6 ? 3e5 : 0 }));
    const points = roundCorners(corners);
    expect(points).toContainEqual({ x: 1e6, y: 1.3e6 });
    expect(points).toContainEqual({ x: 7e5, y: 1e6 });
    expect(points.some((p) => p.x > 1e6 && p.x < 2e6)).toBe(false);
    expect(points.filter((p) => p.x < 1e6 && p.y > 1e6).length).toBeGreaterThan(3);
  });
});
