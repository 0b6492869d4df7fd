// Fully plastic torque by the sand heap, T_p / tau_y = 2 x volume of the roof of slope one. A. Nadai, "Theory of Flow and
// Fracture of Solids", vol. 1, 1950 (from memory; each volume below is plain geometry): rectangle t^2 (3b - t) / 6, circle a
// cone, regular polygon and triangle a pyramid over the inscribed circle, L a roof with one valley worked out piece by piece.

import { describe, expect, test } from 'vitest';
import type { Ring } from '../../src/geom/ring.ts';
import { squaredDistance } from '../../src/geom/segment-distance.ts';
import { findStrength, type StrengthQuestion } from '../../src/strength/find-strength.ts';
import { torqueLimits } from '../../src/strength/torque-limits.ts';
import { circle, polygonOfMm, sector } from '../cases/torsion-shapes.ts';
import { boxOfMm } from '../kit/shapes.ts';

function expectEncloses(section: StrengthQuestion, value: number): void {
  const { below, above } = findStrength(section).plasticTorque;
  // Outlines are whole nanometres, a millionth of a millimetre.
  expect(below).toBeLessThanOrEqual(value * (1 + 1e-6));
  expect(above).toBeGreaterThanOrEqual(value * (1 - 1e-6));
  expect((above - below) / below).toBeLessThan(0.004);
}

describe('roofs of plain geometry', () => {
  test.each([
    [8, 2],
    [5, 5],
    [20, 0.2],
    [6, 5.9],
  ])('rectangle %f x %f', (b, t) => {
    expectEncloses({ ring: boxOfMm(b, t) }, (t * t * (3 * b - t)) / 6);
  });

  test('8 x 2: 14.6667', () => {
    expectEncloses({ ring: boxOfMm(8, 2) }, 14.66667);
  });

  test('circle: 2 pi a^3 / 3', () => {
    expectEncloses(circle(3), (2 * Math.PI * 27) / 3);
  });

  test('slit circle: each place is nearest to the rim or to the slit', () => {
    // Half of it, by the angle u from the slit: rim nearer where r sin u > a - r (beyond u = pi/2 the slit's tip, r).
    const [a, n] = [5, 4000];
    let volume = 0;
    for (let i = 0; i < n; i++) {
      const u = ((i + 0.5) / n) * Math.PI;
      const s = u < Math.PI / 2 ? Math.sin(u) : 1;
      const at = a / (1 + s);
      volume += ((s * at ** 3) / 3 + (a * (a * a - at * at)) / 2 - (a ** 3 - at ** 3) / 3) * (Math.PI / n);
    }
    const { below, above } = findStrength(sector(a, 359.99)).plasticTorque;
    expect(below).toBeLessThan(4 * volume);
    // The slit is drawn 0.01 degrees wide.
    expect(above).toBeGreaterThan(4 * volume * (1 - 1e-4));
  });

  test.each([3, 4, 5, 6, 12, 97])('regular polygon of %i sides: two thirds of area times apothem', (sides) => {
    const r = 4;
    const corners = Array.from({ length: sides }, (_, i) => {
      const angle = (2 * Math.PI * i) / sides;
      return [r * Math.cos(angle), r * Math.sin(angle)] as const;
    });
    const area = (sides * r * r * Math.sin((2 * Math.PI) / sides)) / 2;
    expectEncloses(polygonOfMm(corners), (2 / 3) * area * r * Math.cos(Math.PI / sides));
  });

  test('scalene triangle: two thirds of area times inradius 2A / P', () => {
    const [area, around] = [9, 6 + 3 + Math.hypot(6, 3)];
    expectEncloses(
      polygonOfMm([
        [0, 0],
        [6, 0],
        [0, 3],
      ]),
      (2 / 3) * area * ((2 * area) / around),
    );
  });
});

describe('sections without a closed form, against distances on a grid', () => {
  const comb: (readonly [number, number])[] = [
    ...([
      [0, 0],
      [2, 0],
      [2, 2],
      [1.4, 2.1],
      [1.4, 2.6],
      [2, 2.7],
      [2, 5],
      [2, 8],
    ] as const),
    ...([
      [0, 8],
      [0, 4.2],
      [0.6, 4.2],
      [0.6, 3.6],
      [0, 3.6],
    ] as const),
  ];

  test.each([
    [
      'L',
      [
        [0, 0],
        [7, 0],
        [7, 1],
        [1.5, 1],
        [1.5, 6],
        [0, 6],
      ] as (readonly [number, number])[],
    ],
    ['grooved blade', comb],
  ])('%s', (_, corners) => {
    const section = polygonOfMm(corners);
    const { below, above } = findStrength(section).plasticTorque;
    const sum = gridSum(section.ring, 500);
    // The middle-point rule on 250,000 squares: good to a ten-thousandth.
    expect(below).toBeLessThan(sum * 1.0005);
    expect(above).toBeGreaterThan(sum * 0.9995);
    expect((above - below) / below).toBeLessThan(0.003);
  });
});

/** Twice the sum of distances from the outline at the middles of n x n rectangles of the ring's box, times their area, mm^3. */
function gridSum(ring: Ring, n: number): number {
  const [w, h] = [Math.max(...ring.map((p) => p.x)), Math.max(...ring.map((p) => p.y))];
  let sum = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      const [x, y] = [((i + 0.5) / n) * w, ((j + 0.5) / n) * h];
      let [least, inside] = [Number.POSITIVE_INFINITY, false];
      ring.forEach((a, k) => {
        const b = ring[(k + 1) % ring.length];
        least = Math.min(least, squaredDistance(x, y, a.x, a.y, b.x, b.y));
        if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
      });
      if (inside) sum += Math.sqrt(least);
    }
  return (2 * sum * (w / n) * (h / n)) / 1e18;
}

// Worked by hand: blade of 8 x 2 mm, T = 2.5 N m. k2(4) = 0.281666, tau = 277.37 MPa, so first yield by von Mises needs a
// yield strength of 480.4 MPa; fully plastic torque at 540 MPa 4.57 N m. Bending: t^2 b / 6 = 5.3333 mm^3.
describe('a blade of 8 x 2 mm', () => {
  const section = findStrength({ ring: boxOfMm(8, 2), gap: 5e-4 });

  test('shear of 277.4 MPa at 2.5 N m', () => {
    expect(section.peakShear * 2_500).toBeCloseTo(277.4, -0.5);
  });

  test('first yield, full plasticity and bending', () => {
    const limits = torqueLimits(section, { yield: [480.4, 540] });
    expect(limits.yieldNm.low).toBeGreaterThan(2.49);
    expect(limits.yieldNm.low).toBeLessThan(2.51);
    expect(limits.plasticNm.high).toBeCloseTo(4.57, 2);
    expect(limits.trescaNm.low).toBeCloseTo((limits.yieldNm.low * Math.sqrt(3)) / 2, 10);
    expect(limits.bendingNm.low).toBeCloseTo((480.4 * (8 * 4)) / 6 / 1_000, 6);
  });
});
