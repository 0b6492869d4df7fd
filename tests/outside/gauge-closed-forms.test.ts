// Curves of thickness against height against closed forms.
//
// Upright: elementary, each derived beside its test. The circle is Euclid, Elements III.31: the diagonal of a rectangle in a
// circle is a diameter.
// Tilted: W. B. Carver, "Solution of problem E 1225", Amer. Math. Monthly 64 (1957) 114-116 (from memory, derivation beside
// the test): when a rectangle p x q goes into a rectangle a x b.

import { describe, expect, test } from 'vitest';
import { findingCurve, type ThicknessCurve, thicknessAt, uprightCurve } from '../../src/gauge/thickness-curve.ts';
import type { Ring } from '../../src/geom/ring.ts';
import { boxOfMm, ringOfMm, soundRing, turned } from '../kit/shapes.ts';
import { finish } from '../kit/traced.ts';

const MM = 1e6;

function tilted(ring: Ring, limit: number): ThicknessCurve {
  return finish(findingCurve('k', ring, limit));
}

describe('upright', () => {
  test('an L: the leg by its own width, the foot by its own height', () => {
    // Leg 1.2 wide and 8 tall, foot 3 wide and 2.5 tall, corner shared. A strip taller than the foot stands in the leg.
    const curve = uprightCurve('L', ringOfMm([[0, 0], [3, 0], [3, 2.5], [1.2, 2.5], [1.2, 8], [0, 8]])); // biome-ignore format: one outline
    for (const height of [0.1, 1, 2.4999, 2.5]) expect(thicknessAt(curve, height * MM)).toBe(3 * MM);
    for (const height of [2.500001, 5, 8]) expect(thicknessAt(curve, height * MM)).toBe(1.2 * MM);
    expect(thicknessAt(curve, 8.000001 * MM)).toBe(0);
  });

  test('stairs: each height has the width of the lowest step that is as far from the top', () => {
    // Step k (from 0) is 0.6 (5 - k) wide from k to the top at 5: a strip of height h goes in where 5 - k >= h.
    const stairs = [0, 1, 2, 3, 4].flatMap((k) => [
      [0.6 * (k + 1), k],
      [0.6 * (k + 1), k + 1],
    ]) as [number, number][];
    // Upside down: the widest part is on top, so that the strip hangs from there.
    const curve = uprightCurve('stairs', ringOfMm([[0, 0], ...stairs, [0, 5]]));
    for (const height of [0.3, 1, 1.7, 2, 3, 3.999, 4, 5]) {
      const lowest = Math.floor(5 - height + 1e-9);
      expect(thicknessAt(curve, height * MM)).toBeCloseTo(0.6 * Math.min(5, lowest + 1) * MM, 3);
    }
  });

  test('a right triangle with legs a and b: a (1 - h / b), by similar triangles', () => {
    const curve = uprightCurve('triangle', ringOfMm([[0, 0], [3, 0], [0, 7]])); // biome-ignore format: one triangle
    for (const height of [0.5, 1, 3.3, 6.9])
      expect(thicknessAt(curve, height * MM)).toBeCloseTo(3 * (1 - height / 7) * MM, 2);
  });

  test('a rhombus with diagonals d and e: d (1 - h / e)', () => {
    const curve = uprightCurve('rhombus', ringOfMm([[0, -4], [1.5, 0], [0, 4], [-1.5, 0]])); // biome-ignore format: one rhombus
    for (const height of [0.2, 2, 5, 7.5])
      expect(thicknessAt(curve, height * MM)).toBeCloseTo(3 * (1 - height / 8) * MM, 2);
  });

  test('a circle of diameter d: the root of d^2 - h^2, between the inner and the outer polygon', () => {
    const [d, corners] = [4, 720];
    const round = (diameter: number) =>
      soundRing(
        Array.from({ length: corners }, (_, i) => {
          const angle = ((i + 0.5) * 2 * Math.PI) / corners;
          return { x: (diameter / 2) * MM * Math.cos(angle), y: (diameter / 2) * MM * Math.sin(angle) };
        }),
      );
    const [inner, outer] = [uprightCurve('in', round(d)), uprightCurve('out', round(d / Math.cos(Math.PI / corners)))];
    for (const height of [0.4, 1, 2.2, 3.1, 3.9]) {
      const exact = Math.sqrt(d * d - height * height) * MM;
      expect(thicknessAt(inner, height * MM)).toBeLessThanOrEqual(exact + 1);
      expect(thicknessAt(outer, height * MM)).toBeGreaterThanOrEqual(exact - 1);
      expect(thicknessAt(outer, height * MM) - thicknessAt(inner, height * MM)).toBeLessThan(200);
    }
  });

  test('a slot turned by an angle: what its turned corners leave', () => {
    // The box round a w x h rectangle turned by t is (w cos t + h sin t) x (h cos t + w sin t): it has to be within a x b.
    const [a, b, degrees] = [2, 8, 7];
    const curve = uprightCurve('turned', turned(boxOfMm(a, b), degrees));
    for (const height of [0.5, 2, 4, 6, 7.9])
      expect(
        Math.abs(thicknessAt(curve, height * MM) - boxedThickness(a, b, height, (degrees * Math.PI) / 180) * MM),
      ).toBeLessThan(5);
  });
});

/** The thickest w with w cos t + h sin t <= a and h cos t + w sin t <= b, 0 where there is none. */
function boxedThickness(a: number, b: number, h: number, t: number): number {
  const [c, s] = [Math.cos(t), Math.sin(t)];
  const across = (a - h * s) / c;
  const along = (b - h * c) / Math.max(s, 1e-12);
  return Math.max(0, Math.min(across, along));
}

describe('tilted', () => {
  // Carver: p x q (p >= q) goes into a x b (a >= b) at some angle if and only if p <= a and q <= b, or p > a, q <= b and
  // b >= (2 p q a + (p^2 - q^2) sqrt(p^2 + q^2 - a^2)) / (p^2 + q^2). Derivation: the turned rectangle touches all four
  // sides at the angle t with p cos t + q sin t = a; the needed b is p sin t + q cos t at that t.
  const needed = (p: number, q: number, a: number) =>
    (2 * p * q * a + (p * p - q * q) * Math.sqrt(p * p + q * q - a * a)) / (p * p + q * q);

  test('strips taller than a slot go in along its diagonal as thick as Carver says', () => {
    const [a, b] = [8, 3];
    const curve = tilted(boxOfMm(b, a), 0.5);
    for (const height of [8.05, 8.1, 8.2, 8.35]) {
      const thickness = thicknessAt(curve, height * MM) / MM;
      expect(thickness).toBeGreaterThan(0.2);
      // Goes in; thicker and taller by what the curve may be off, it does not (1 um each, and the rounding of the root).
      expect(needed(height, thickness, a)).toBeLessThanOrEqual(b + 1e-8);
      expect(needed(height + 0.001, thickness + 0.001, a)).toBeGreaterThan(b);
    }
  });

  test('a slot turned by less than the limit lets its whole width pass', () => {
    const curve = tilted(turned(boxOfMm(2, 8), 2), (3 * Math.PI) / 180);
    for (const height of [1, 4, 7.9]) {
      const thickness = thicknessAt(curve, height * MM);
      expect(thickness).toBeLessThanOrEqual(2 * MM + 1_000);
      expect(thickness).toBeGreaterThan(2 * MM - 1_000);
    }
  });

  test('a slot turned by more than the limit: the best of all allowed angles', () => {
    const [a, b, off, limit] = [2, 8, (5 * Math.PI) / 180, (2 * Math.PI) / 180];
    const curve = tilted(turned(boxOfMm(a, b), 5), limit);
    for (const height of [1, 3, 5, 7, 7.8]) {
      const angles = Array.from({ length: 20_001 }, (_, i) => Math.abs(off - limit + (2 * limit * i) / 20_000));
      const best = Math.max(...angles.map((t) => boxedThickness(a, b, height, t))) * MM;
      const thickness = thicknessAt(curve, height * MM);
      expect(thickness).toBeLessThanOrEqual(best + 10);
      expect(thicknessAt(curve, height * MM - 1_000)).toBeGreaterThan(best - 1_000);
    }
  });

  test('wards that pass each other: only leaning strips go by, between the two tips', () => {
    // Tips at (1.2, 3) on the left and (0.8, 5) on the right pass each other by 0.4 over 2 in height. A strip that leans by d
    // has the left tip on its left side and the right tip on its right side: w = 2 sin d - 0.4 cos d, growing with d.
    const keyway = ringOfMm([[0, 0], [2, 0], [2, 5], [0.8, 5], [0.8, 5.5], [2, 5.5], [2, 8], [0, 8], [0, 3], [1.2, 3], [1.2, 2], [0, 2]]); // biome-ignore format: one outline
    const limit = 0.25;
    const exact = (2 * Math.sin(limit) - 0.4 * Math.cos(limit)) * MM;
    expect(thicknessAt(uprightCurve('k', keyway), 7 * MM)).toBe(0);
    const curve = tilted(keyway, limit);
    expect(thicknessAt(curve, 7 * MM)).toBeLessThanOrEqual(exact + 0.01);
    expect(thicknessAt(curve, 7 * MM)).toBeGreaterThan(exact - 1_000);
  });
});
