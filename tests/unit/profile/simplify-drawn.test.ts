import { describe, expect, test } from 'vitest';
import type { Point } from '../../../src/geom/point.ts';
import { ARC_CHORD_ERROR, makeDrawn, type Vertex } from '../../../src/geom/vertex.ts';
import { findArcs, withArcs } from '../../../src/profile/find-arcs.ts';
import { simplifyDrawn } from '../../../src/profile/simplify-drawn.ts';

const MM = 1e6;
const UM = 1e3;
const QUARTER = Math.tan(Math.PI / 8);

/** A blade of 2 x 8 mm whose lower corners are rounded by 0.5 mm. */
const blade: Vertex[] = [
  { x: 0.5 * MM, y: 0 },
  { x: 1.5 * MM, y: 0, bulge: QUARTER },
  { x: 2 * MM, y: 0.5 * MM },
  { x: 2 * MM, y: 8 * MM },
  { x: 0, y: 8 * MM },
  { x: 0, y: 0.5 * MM, bulge: QUARTER },
];

function ringOf(vertices: readonly Vertex[]): readonly Point[] {
  const made = makeDrawn(vertices);
  if (!made.ok) throw new Error(made.fault.message);
  return made.ring;
}

function simplified(vertices: readonly Vertex[], tolerance: number, arcs = true) {
  const simpler = simplifyDrawn(vertices, tolerance, arcs);
  if (!simpler.ok) throw new Error(simpler.fault.what);
  return simpler;
}

/** The outline as a set of lines, wherever it begins. */
const asSet = (vertices: readonly Vertex[]) =>
  new Set(vertices.map(({ x, y, bulge = 0 }) => `${x} ${y} ${bulge.toFixed(4)}`));

describe('finding arcs', () => {
  test('the chords of an outline become its arcs again', () => {
    const chords = ringOf(blade);
    expect(chords.length).toBeGreaterThan(30);
    expect(asSet(withArcs(chords, ARC_CHORD_ERROR + 2))).toEqual(asSet(blade));
  });

  test('a polygon with corners has no arcs, however small it is beside the tolerance', () => {
    const square = [0, 1, 2, 3, 4].map((k) => ({ x: [0, 9, 9, 0, 0][k] * UM, y: [0, 0, 9, 9, 0][k] * UM }));
    expect(findArcs(square, 50 * UM)).toEqual([]);
  });

  test('the deviation of an arc is that of its chords', () => {
    // Eight chords on a half circle of 1 mm: each sags 1 - cos(pi / 16), 19.2 um.
    const half = Array.from({ length: 9 }, (_, k) => ({
      x: Math.round(MM * Math.cos((k * Math.PI) / 8)),
      y: Math.round(MM * Math.sin((k * Math.PI) / 8)),
    }));
    const [arc] = findArcs(half, 20 * UM);
    expect(arc).toMatchObject({ from: 0, to: 8 });
    expect(arc.bulge).toBeCloseTo(1, 5);
    expect(arc.off / UM).toBeCloseTo(1000 * (1 - Math.cos(Math.PI / 16)), 1);
    expect(findArcs(half, 19 * UM)).toEqual([]);
  });
});

describe('simplifying', () => {
  test('a circle of a thousand chords becomes two half circles', () => {
    const circle = Array.from({ length: 1000 }, (_, k) => ({
      x: Math.round(3 * MM * Math.cos((k * Math.PI) / 500)),
      y: Math.round(3 * MM * Math.sin((k * Math.PI) / 500)),
    }));
    const { vertices, deviation, newArcs } = simplified(circle, UM);
    expect(newArcs).toBe(2);
    expect(vertices).toHaveLength(2);
    expect(deviation).toBeLessThan(20);
  });

  test('vertices in line go, arcs stay as they are, and the stated deviation is the true one', () => {
    const inLine: Vertex[] = [
      ...blade.slice(0, 3),
      { x: 2 * MM, y: 3 * MM },
      { x: 2 * MM + 4 * UM, y: 5 * MM },
      ...blade.slice(3),
    ];
    const { vertices, deviation } = simplified(inLine, 5 * UM);
    expect(asSet(vertices)).toEqual(asSet(blade));
    expect(deviation).toBeCloseTo(4 * UM, 6);
    expect(simplified(inLine, 3 * UM).vertices).toHaveLength(7);
    expect(simplified(blade, 50 * UM)).toMatchObject({ deviation: 0, newArcs: 0 });
  });

  test('without arcs, chords stay chords', () => {
    const { vertices } = simplified(ringOf(blade), 2 * UM, false);
    expect(vertices.every(({ bulge }) => bulge === undefined)).toBe(true);
    expect(vertices.length).toBeLessThan(ringOf(blade).length);
  });

  test('an outline that comes near to itself is simplified by less, and the result is sound', () => {
    // A slit of 20 um with a ripple of 15 um on one side: by 15 um the ripple would go and nothing touch.
    const ripple = Array.from({ length: 19 }, (_, k) => ({ x: (k + 1) * 0.1 * MM, y: 2 * MM + (k % 2) * 15 * UM }));
    const outline: Vertex[] = [
      { x: 0, y: 0 },
      { x: 3 * MM, y: 0 },
      { x: 3 * MM, y: 4 * MM },
      { x: 0, y: 4 * MM },
      { x: 0, y: 2 * MM + 20 * UM },
      { x: 2 * MM, y: 2 * MM + 20 * UM },
      ...ripple.toReversed(),
      { x: 0, y: 2 * MM },
    ];
    for (const tolerance of [100 * UM, 30 * UM, 16 * UM]) {
      const { vertices, deviation } = simplified(outline, tolerance);
      expect(makeDrawn(vertices).ok).toBe(true);
      expect(deviation).toBeLessThanOrEqual(tolerance);
    }
  });

  test('a tolerance of nothing is refused in words', () => {
    expect(simplifyDrawn(blade, 0).ok).toBe(false);
    expect(simplifyDrawn(blade, Number.NaN).ok).toBe(false);
  });
});
