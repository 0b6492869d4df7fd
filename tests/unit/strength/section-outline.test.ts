import { describe, expect, test } from 'vitest';
import { flattenOutline, turnAtStart } from '../../../src/strength/flatten-outline.ts';
import { sectionOutline } from '../../../src/strength/section-outline.ts';
import { sectionProperties } from '../../../src/strength/section-properties.ts';
import { bluntCorners, leastRootRadius, sharpCorners } from '../../../src/strength/sharp-corners.ts';
import { milledRing, rootedBlade } from '../../cases/strength-blades.ts';
import { circle, groovedBar, polygonOfMm, sector } from '../../cases/torsion-shapes.ts';

/** The area of a polygon, mm^2. */
function areaOf(corners: readonly { x: number; y: number }[]): number {
  return (
    corners.reduce((sum, p, i) => {
      const q = corners[(i + 1) % corners.length];
      return sum + p.x * q.y - q.x * p.y;
    }, 0) / 2
  );
}

describe('the outline of a section', () => {
  test('a milled blade has the arcs of its roots, whatever its ring', () => {
    const outline = sectionOutline({ ring: milledRing(rootedBlade(0.06)), milled: rootedBlade(0.06) });
    const inwards = outline.edges.filter(({ arc }) => arc && arc.sweep < 0);
    expect(inwards).toHaveLength(4);
    for (const { arc } of inwards) expect(arc?.radius).toBeCloseTo(0.06, 5);
    expect(leastRootRadius(outline)).toBeCloseTo(60_000, -2);
  });

  test('lies between two polygons with the same corners', () => {
    for (const section of [circle(4), groovedBar(4, 1), sector(4, 270)]) {
      const outline = sectionOutline(section);
      const { area } = sectionProperties(outline);
      const { corners, hasArcs } = flattenOutline(outline, 1e-3);
      const [inner, outer] = [areaOf(corners.map((c) => c.inner)), areaOf(corners.map((c) => c.outer))];
      expect(hasArcs).toBe(true);
      expect(inner).toBeLessThan(area);
      expect(outer).toBeGreaterThan(area);
      expect((outer - inner) / area).toBeLessThan(2e-3);
    }
  });

  test('a polygon is its own both polygons', () => {
    const { corners, hasArcs } = flattenOutline(
      sectionOutline(
        polygonOfMm([
          [0, 0],
          [3, 0],
          [0, 2],
        ]),
      ),
      1e-3,
    );
    expect(hasArcs).toBe(false);
    for (const { inner, outer } of corners) expect(inner).toEqual(outer);
  });

  test('turns by nothing where an arc goes on from its tangent', () => {
    const outline = sectionOutline({ ring: milledRing(rootedBlade(0.06)), milled: rootedBlade(0.06) });
    const atArcs = outline.edges.flatMap(({ arc }, i) => (arc ? [turnAtStart(outline, i)] : []));
    for (const turn of atArcs) expect(Math.abs(turn)).toBeLessThan(1e-3);
  });
});

describe('sharp corners', () => {
  test('square roots are told with place and angle, rounded ones are not', () => {
    const sharp = sharpCorners(sectionOutline({ ring: milledRing(rootedBlade(0)), milled: rootedBlade(0) }));
    expect(sharp).toHaveLength(4);
    for (const { angle } of sharp) expect((angle * 180) / Math.PI).toBeCloseTo(260, 0);
    expect(sharp.map(({ x }) => x).sort((a, b) => a - b)).toEqual([500_000, 500_000, 1_500_000, 1_500_000]);
    expect(sharpCorners(sectionOutline({ ring: milledRing(rootedBlade(0.06)), milled: rootedBlade(0.06) }))).toEqual(
      [],
    );
  });

  test('a rounding drawn as chords is no sharp corner, and its corners are told as blunt', () => {
    const outline = sectionOutline({ ring: milledRing(rootedBlade(0.06)) });
    const sharp = sharpCorners(outline);
    expect(sharp).toEqual([]);
    expect(bluntCorners(outline, sharp).length).toBeGreaterThan(8);
    expect(leastRootRadius(outline)).toBeNull();
  });

  test('a lone gentle corner is sharp all the same', () => {
    const outline = sectionOutline(
      polygonOfMm([
        [0, 0],
        [4, 0],
        [4, 3],
        [2, 2.4],
        [0, 3],
      ]),
    );
    expect(sharpCorners(outline).map(({ x, y }) => [x, y])).toEqual([[2e6, 2.4e6]]);
  });
});
