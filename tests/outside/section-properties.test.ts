// Section properties against handbooks. Right triangle, regular polygons, semicircle, trapezoid: any handbook (from memory;
// each worked out anew). Quadrilateral: W. D. Pilkey, "Analysis and Design of Elastic Beams", 2002, Ex. 6.6, p. 267. I-beam:
// D. J. Peery, "Aircraft Structures", 1950, sec. 6.2, Ex. 1. "Custom" section and angle: tests of the general-purpose library
// robbievanleeuwen/section-properties (MIT, commit 1e12d48), the angle after Pilkey 2002, Ex. 1.1.

import { describe, expect, test } from 'vitest';
import { sectionOutline } from '../../src/strength/section-outline.ts';
import { type SectionProperties, sectionProperties } from '../../src/strength/section-properties.ts';
import { circle, type DrawnSection, groovedBar, polygonOfMm, sectionOfMm, sector } from '../cases/torsion-shapes.ts';

/** Properties with the centroid in the section's own millimetres. */
function propertiesOf(section: DrawnSection): SectionProperties {
  const outline = sectionOutline(section);
  const found = sectionProperties(outline);
  const { x, y } = found.centroid;
  return { ...found, centroid: { x: x + outline.origin.x / 1e6, y: y + outline.origin.y / 1e6 } };
}

describe('polygons', () => {
  test('right triangle 6 x 3', () => {
    const { area, centroid, ix, iy, ixy } = propertiesOf(
      polygonOfMm([
        [0, 0],
        [6, 0],
        [0, 3],
      ]),
    );
    expect(area).toBeCloseTo(9, 10);
    expect(centroid.x).toBeCloseTo(2, 10);
    expect(centroid.y).toBeCloseTo(1, 10);
    expect([ix, iy, ixy].map((i) => Number(i.toFixed(9)))).toEqual([4.5, 18, -4.5]);
  });

  test.each([
    [6, 2.598076, 0.541266],
    [12, 3, 0.716506],
  ])('regular polygon of %i sides', (n, area, i) => {
    const r = 4;
    const found = propertiesOf(
      polygonOfMm(
        Array.from({ length: n }, (_, k) => {
          const angle = (2 * Math.PI * k) / n;
          return [r * Math.cos(angle), r * Math.sin(angle)] as const;
        }),
      ),
    );
    // Told to six places, corners rounded to a nanometre.
    expect(Math.abs(found.area / r ** 2 - area)).toBeLessThan(1e-6);
    expect(Math.abs(found.ix / r ** 4 - i)).toBeLessThan(1e-6);
    expect(Math.abs(found.iy / r ** 4 - i)).toBeLessThan(1e-6);
    expect(found.ixy / r ** 4).toBeCloseTo(0, 6);
  });

  test('trapezoid 4, 2, 3 high', () => {
    const { area, centroid, ix, iy } = propertiesOf(
      polygonOfMm([
        [0, 0],
        [4, 0],
        [3, 3],
        [1, 3],
      ]),
    );
    expect([area, centroid.y, ix, iy].map((i) => Number(i.toFixed(6)))).toEqual([9, 1.333333, 6.5, 7.5]);
  });

  test('Pilkey Ex. 6.6: quadrilateral, its weakest axis at right angles to the one told', () => {
    const found = propertiesOf(
      polygonOfMm([
        [-0.5, -1],
        [0.5, -1],
        [0.5, 2],
        [-0.5, 1],
      ]),
    );
    expect(found.area).toBeCloseTo(2.5, 8);
    expect(found.centroid.x).toBeCloseTo(0.033333, 6);
    expect(found.centroid.y).toBeCloseTo(0.266667, 6);
    expect([found.ix, found.iy, found.ixy].map((i) => Number(i.toFixed(6)))).toEqual([1.405556, 0.205556, 0.102778]);
    expect((found.weakAxis * 180) / Math.PI).toBeCloseTo(-4.860108 + 90, 5);
  });

  test('Peery: I-beam 6 in deep, flanges 3 x 1, web 1 thick; 800,000 in-lb give 55,427 psi', () => {
    const found = propertiesOf(
      polygonOfMm([
        ...([
          [0, 0],
          [3, 0],
          [3, 1],
          [2, 1],
          [2, 5],
          [3, 5],
        ] as const),
        ...([
          [3, 6],
          [0, 6],
          [0, 5],
          [1, 5],
          [1, 1],
          [0, 1],
        ] as const),
      ]),
    );
    expect(found.ix).toBeCloseTo(43.3333, 4);
    // With the book's own I of 43.3.
    expect((800_000 * 3) / found.ix / 55_427.3).toBeCloseTo(1, 2);
    expect(found.weakest).toBeCloseTo(found.iy, 10);
    expect(found.weakModulus).toBeCloseTo(found.iy / 1.5, 10);
  });

  test('the "custom" section, at a tenth of its size', () => {
    const found = propertiesOf(
      polygonOfMm(
        [
          ...([
            [-10, 0],
            [110, 0],
            [100, 10],
            [55, 10],
            [55, 90],
            [100, 90],
            [110, 100],
            [110, 110],
          ] as const),
          ...([
            [-10, 110],
            [-10, 100],
            [0, 90],
            [45, 90],
            [45, 10],
            [-10, 10],
          ] as const),
        ],
        0.1,
      ),
    );
    expect(found.area).toBeCloseTo(42.5, 8);
    expect(found.centroid.x).toBeCloseTo(4.933333, 5);
    expect(found.centroid.y).toBeCloseTo(6.501961, 5);
    expect(found.ix / 770.5415).toBeCloseTo(1, 6);
    expect(found.iy / 384.2278).toBeCloseTo(1, 6);
    expect(found.ixy / 16.54722).toBeCloseTo(1, 6);
  });

  test('Pilkey Ex. 1.1: angle, ten times as large', () => {
    const found = propertiesOf(
      polygonOfMm(
        [
          [-0.05, -2],
          [0.05, -2],
          [0.05, -0.05],
          [1, -0.05],
          [1, 0.05],
          [-0.05, 0.05],
        ],
        10,
      ),
    );
    expect(found.area).toBeCloseTo(30, 1);
    expect(found.centroid.x).toBeCloseTo(1.663, 2);
    expect(found.centroid.y).toBeCloseTo(-6.663, 2);
    const told = [found.ix, found.iy, found.ixy, found.strongest, found.weakest].map((i) =>
      Number((i / 1e4).toFixed(4)),
    );
    expect(told).toEqual([0.1336, 0.0252, 0.0332, 0.143, 0.0158]);
  });

  test('hollow 10 x 8 less 6 x 4, opened by a cut of 2 nm: 394.6667', () => {
    const e = 1e-6;
    const found = propertiesOf(
      polygonOfMm([
        ...([
          [0, 0],
          [10, 0],
          [10, 4 - e],
          [8, 4 - e],
          [8, 2],
          [2, 2],
        ] as const),
        ...([
          [2, 6],
          [8, 6],
          [8, 4 + e],
          [10, 4 + e],
          [10, 8],
          [0, 8],
        ] as const),
      ]),
    );
    expect(found.ix).toBeCloseTo(394.6667, 3);
  });
});

describe('true arcs', () => {
  test('circle: pi a^4 / 4', () => {
    const { area, ix, iy, weakModulus } = propertiesOf(circle(5));
    expect(area).toBeCloseTo(Math.PI * 25, 6);
    expect(ix).toBeCloseTo((Math.PI / 4) * 625, 5);
    expect(iy).toBeCloseTo((Math.PI / 4) * 625, 5);
    expect(weakModulus).toBeCloseTo((Math.PI / 4) * 125, 5);
  });

  test('semicircle: centroid 4R / 3pi, pi/8 - 8/9pi, pi/8', () => {
    const { centroid, ix, iy, weakest, weakModulus } = propertiesOf(sector(1, 180));
    expect(centroid.y).toBeCloseTo(0.424413, 6);
    expect(ix).toBeCloseTo(0.109757, 6);
    expect(iy).toBeCloseTo(Math.PI / 8, 6);
    // The top of the arc is furthest from the axis.
    expect(weakModulus).toBeCloseTo(weakest / (1 - 0.424413), 6);
  });

  test('a groove takes away what lies in both circles', () => {
    const [a, b] = [5, 2];
    const half = 2 * Math.asin(b / (2 * a));
    const open = Math.atan2(a * Math.sin(half), a - a * Math.cos(half));
    const lens = a * a * (half - Math.sin(2 * half) / 2) + b * b * (open - Math.sin(2 * open) / 2);
    expect(propertiesOf(groovedBar(a, b)).area).toBeCloseTo(Math.PI * a * a - lens, 4);
  });

  test('a slot with round ends: 4r^2 + pi r^2 between', () => {
    const { area, ix } = propertiesOf(
      sectionOfMm([
        [-2, -1],
        [2, -1, 1],
        [2, 1],
        [-2, 1, 1],
      ]),
    );
    expect(area).toBeCloseTo(8 + Math.PI, 6);
    expect(ix).toBeCloseTo((4 * 8) / 12 + Math.PI / 4, 6);
  });
});
