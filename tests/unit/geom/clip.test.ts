import { describe, expect, test } from 'vitest';
import { difference, intersection, offset, symmetricDifference, union, unionOfLoops } from '../../../src/geom/clip.ts';
import { sideOfRegion } from '../../../src/geom/contains-point.ts';
import { MAX_COORDINATE, type Point } from '../../../src/geom/point.ts';
import { boundariesOf, type Region, regionOf } from '../../../src/geom/region.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { nearestOnSegment } from '../../../src/geom/segment-distance.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

const areaOf = (region: Region) => boundariesOf(region).reduce((sum, ring) => sum + signedArea(ring), 0);
const boxAt = (x: number, y: number, width: number, height: number): Region =>
  regionOf(
    ringOfMm([
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ]),
  );
const MM2 = 1e12;

/** Distance of a point from an outline, whichever side it is on. */
function distance(ring: readonly Point[], p: Point): number {
  const nearest = ring.map((a, i) => nearestOnSegment(p, a, ring[(i + 1) % ring.length]));
  return Math.min(...nearest.map((q) => Math.hypot(q.x - p.x, q.y - p.y)));
}

/** Corners and middles of the chords of a boundary. */
function placesOn(ring: readonly Point[]): Point[] {
  return ring.flatMap((p, i) => {
    const q = ring[(i + 1) % ring.length];
    return [p, { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 }];
  });
}

/** A wedge with its tip at the origin. */
function wedge(halfAngle: number): Ring {
  const far = 3e6;
  return soundRing([
    { x: 0, y: 0 },
    { x: far * Math.cos(halfAngle), y: -far * Math.sin(halfAngle) },
    { x: far * Math.cos(halfAngle), y: far * Math.sin(halfAngle) },
  ]);
}

describe('combining regions', () => {
  const [a, b] = [boxAt(0, 0, 4, 4), boxAt(2, 2, 4, 4)];

  test('union, intersection, difference and their areas', () => {
    expect(areaOf(union(a, b))).toBe(28 * MM2);
    expect(areaOf(intersection(a, b))).toBe(4 * MM2);
    expect(areaOf(difference(a, b))).toBe(12 * MM2);
    expect(areaOf(symmetricDifference(a, b))).toBe(24 * MM2);
  });

  test('a hole runs clockwise inside its outer boundary', () => {
    const frame = difference(boxAt(0, 0, 9, 9), boxAt(3, 3, 3, 3));
    expect(frame).toHaveLength(1);
    expect(frame[0].holes).toHaveLength(1);
    expect(signedArea(frame[0].outer)).toBe(81 * MM2);
    expect(signedArea(frame[0].holes[0])).toBe(-9 * MM2);
    expect(sideOfRegion(frame, { x: 4e6, y: 4e6 })).toBe('outside');
  });

  test('a hole given is a hole taken off', () => {
    const frame = difference(boxAt(0, 0, 9, 9), boxAt(3, 3, 3, 3));
    expect(areaOf(intersection(frame, boxAt(0, 0, 4, 4)))).toBe(15 * MM2);
    expect(areaOf(union(frame, boxAt(2, 2, 5, 5)))).toBe(81 * MM2);
  });

  test('what only touches shares nothing: contact has no area', () => {
    expect(intersection(boxAt(0, 0, 1, 1), boxAt(1, 0, 1, 1))).toEqual([]);
    expect(union(boxAt(0, 0, 1, 1), boxAt(1, 0, 1, 1))).toHaveLength(1);
    expect(intersection(boxAt(0, 0, 1, 1), boxAt(1, 1, 1, 1))).toEqual([]);
  });

  test('nothing less something is nothing', () => {
    expect(difference([], a)).toEqual([]);
    expect(union([], [])).toEqual([]);
    expect(areaOf(difference(a, []))).toBe(16 * MM2);
  });

  test('right up to the limit of the coordinates', () => {
    const M = MAX_COORDINATE / 1e6;
    const all = boxAt(-M, -M, 2 * M, 2 * M);
    expect(areaOf(difference(all, boxAt(0, 0, M, M)))).toBe(3 * MAX_COORDINATE ** 2);
  });

  test('loops that cross themselves: every place they run round, once', () => {
    const eight = ringOfMm([
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ]).concat(boxOfMm(4, 1));
    expect(areaOf(unionOfLoops([eight]))).toBe(6 * MM2);
    expect(unionOfLoops([[...boxOfMm(1, 1)].reverse()])).toEqual([]);
  });
});

describe('offsets', () => {
  test('a square grown by a mitre is a larger square, shrunk a smaller one', () => {
    expect(areaOf(offset(boxAt(0, 0, 2, 2), 500_000, 'mitre'))).toBe(9 * MM2);
    expect(areaOf(offset(boxAt(0, 0, 2, 2), -500_000, 'mitre'))).toBe(1 * MM2);
  });

  test('shrunk by its inradius nothing is left', () => {
    expect(offset(boxAt(0, 0, 2, 2), -1_000_000, 'round')).toEqual([]);
  });

  test('a hole shrinks as its region grows, and closes', () => {
    const frame = difference(boxAt(0, 0, 9, 9), boxAt(4, 4, 1, 1));
    expect(areaOf(offset(frame, 250_000, 'mitre'))).toBe(9.5 * 9.5 * MM2 - 0.25 * MM2);
    expect(offset(frame, 500_000, 'mitre')[0].holes).toEqual([]);
  });

  test.each([
    [1_000_000, 100],
    [128_000, 12_800],
    [128_000, 100],
    [60_000, 250],
    [500, 40],
  ])('grown round by %i nm: never outside the true offset, never short of it by more than %i nm', (by, tolerance) => {
    for (let halfAngle = 0.05; halfAngle < 1.55; halfAngle += 0.023) {
      const ring = wedge(halfAngle);
      const [grown] = offset(regionOf(ring), by, 'round', tolerance);
      for (const p of placesOn(grown.outer)) {
        expect(distance(ring, p)).toBeLessThan(by + 1);
        expect(distance(ring, p)).toBeGreaterThan(by - tolerance - 1.5);
      }
    }
  });

  test('grown by a mitre: contains the true offset, at sharp corners too', () => {
    for (let halfAngle = 0.02; halfAngle < 1.55; halfAngle += 0.02) {
      const ring = wedge(halfAngle);
      const [grown] = offset(regionOf(ring), 60_000, 'mitre');
      for (const p of placesOn(grown.outer)) expect(distance(ring, p)).toBeGreaterThan(60_000 - 1.5);
    }
  });
});
