import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { asTrustedRing, type Ring } from '../../src/geom/ring.ts';
import { makeDrawn, vertexAt } from '../../src/geom/vertex.ts';
import { checkMilled } from '../../src/profile/check-milled.ts';
import { millOutline, millVertices } from '../../src/profile/mill-outline.ts';
import type { Milled } from '../../src/profile/profile.ts';
import { findStrength, type StrengthQuestion } from '../../src/strength/find-strength.ts';
import { soundRing } from '../kit/shapes.ts';

// A busy machine must not fail a correct answer.
vi.setConfig({ testTimeout: 180_000 });

/** Blades with up to three grooves, sharp or rounded, millimetre hundredths. */
const blade: fc.Arbitrary<Milled> = fc
  .record({
    thickness: fc.integer({ min: 150, max: 260 }),
    height: fc.integer({ min: 600, max: 900 }),
    backRadius: fc.integer({ min: 0, max: 40 }),
    grooves: fc.array(
      fc.record({
        side: fc.constantFrom('left' as const, 'right' as const),
        place: fc.integer({ min: 0, max: 3 }),
        width: fc.integer({ min: 40, max: 90 }),
        depth: fc.integer({ min: 20, max: 60 }),
        flank: fc.integer({ min: 0, max: 15 }),
        rootRadius: fc.integer({ min: 0, max: 9 }),
      }),
      { maxLength: 3 },
    ),
  })
  .map(({ thickness, height, backRadius, grooves }) => ({
    ...{ thickness: thickness * 1e4, height: height * 1e4, backRadius: backRadius * 1e4 },
    grooves: grooves
      .filter((g, i) => grooves.findIndex((other) => other.place === g.place && other.side === g.side) === i)
      .map((g) => ({
        ...{ side: g.side, bottom: (100 + g.place * 120) * 1e4, width: g.width * 1e4, depth: g.depth * 1e4 },
        ...{ flank: (g.flank * Math.PI) / 180, rootRadius: g.rootRadius * 1e4 },
      })),
  }))
  .filter((milled) => checkMilled(milled).length === 0);

function ringOf(milled: Milled): Ring {
  const made = millOutline(milled);
  if (!Array.isArray(made)) throw new Error('a blade with a fault');
  return asTrustedRing(made);
}

/** Two pairs of bounds that may be of one value. */
function expectSame(one: { below: number; above: number }, other: { below: number; above: number }, times = 1): void {
  // Turned corners are rounded to whole nanometres.
  expect(one.below).toBeLessThanOrEqual(other.above * times * (1 + 1e-5));
  expect(one.above).toBeGreaterThanOrEqual(other.below * times * (1 - 1e-5));
}

test('bounds stand in order and come as close as asked; so do those of the sand heap', () => {
  fc.assert(
    fc.property(blade, (milled) => {
      const { torsion, plasticTorque, converged, peakShear, area, weakest, ix, iy, steps } = findStrength({
        ring: ringOf(milled),
        milled,
      });
      expect(torsion.below).toBeLessThanOrEqual(torsion.best);
      expect(torsion.best).toBeLessThanOrEqual(torsion.above);
      expect(converged).toBe(true);
      expect(torsion.above / torsion.below).toBeLessThan(1.00201);
      expect(plasticTorque.below).toBeLessThanOrEqual(plasticTorque.above);
      expect(plasticTorque.above / plasticTorque.below).toBeLessThan(1.005);
      // Fully plastic torque is more than that at first yield.
      expect(plasticTorque.above * peakShear).toBeGreaterThan(1);
      // Saint-Venant: no section of an area is stiffer than the circle.
      expect(torsion.below).toBeLessThan((area * area) / (2 * Math.PI));
      // Nicolai: no more than 4 Ix Iy / (Ix + Iy).
      expect(torsion.below).toBeLessThanOrEqual((4 * ix * iy) / (ix + iy));
      expect(weakest).toBeLessThanOrEqual(Math.min(ix, iy) * (1 + 1e-12));
      steps.slice(1).forEach(({ below, above }, k) => {
        expect(below).toBeGreaterThanOrEqual(steps[k].below);
        expect(above).toBeLessThanOrEqual(steps[k].above);
      });
    }),
    { numRuns: 12, seed: 5 },
  );
});

test('size: J goes with the fourth power, torques and moduli with the third', () => {
  fc.assert(
    fc.property(blade, fc.constantFrom(2, 3), (milled, s) => {
      const ring = ringOf({ ...milled, grooves: milled.grooves.map((g) => ({ ...g, rootRadius: 0 })) });
      const [one, large] = [ring, soundRing(ring.map((p) => ({ x: s * p.x, y: s * p.y })))].map((r) =>
        findStrength({ ring: r }),
      );
      expectSame(large.torsion, one.torsion, s ** 4);
      expectSame(large.plasticTorque, one.plasticTorque, s ** 3);
      expect(large.weakModulus / one.weakModulus / s ** 3).toBeCloseTo(1, 8);
      expect(large.peakShear / one.peakShear).toBeCloseTo(1 / s ** 3, 2);
    }),
    { numRuns: 5, seed: 6 },
  );
});

/** A blade with true arcs, turned by degrees and perhaps mirrored. */
function posed(milled: Milled, degrees: number, mirrored: boolean): StrengthQuestion {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const made = makeDrawn(
    millVertices(milled).map(({ x, y, bulge = 0 }) => {
      const [across, turn] = mirrored ? [-x, -bulge] : [x, bulge];
      return vertexAt(c * across - s * y, s * across + c * y, turn);
    }),
  );
  if (!made.ok) throw new Error(made.fault.message);
  return made;
}

test('turning, moving and mirroring change nothing but the axes', () => {
  fc.assert(
    fc.property(blade, fc.integer({ min: -170, max: 170 }), fc.boolean(), (milled, degrees, mirrored) => {
      const [one, other] = [posed(milled, 0, false), posed(milled, degrees, mirrored)].map((q) => findStrength(q));
      expectSame(other.torsion, one.torsion);
      expectSame(other.plasticTorque, one.plasticTorque);
      expect(other.weakest / one.weakest).toBeCloseTo(1, 5);
      expect(other.weakModulus / one.weakModulus).toBeCloseTo(1, 5);
      expect(other.sharpCorners).toHaveLength(one.sharpCorners.length);
      // Beside sharp corners the peak is told less exactly.
      const near = one.sharpCorners.length > 0 ? 0.1 : 0.03;
      expect(Math.abs(other.peakShear / one.peakShear - 1)).toBeLessThan(near);
    }),
    { numRuns: 4, seed: 7, endOnFailure: true },
  );
});

test('a groove takes stiffness and plastic torque away', () => {
  fc.assert(
    fc.property(
      blade.filter(({ grooves }) => grooves.length > 0),
      (milled) => {
        const fewer = { ...milled, grooves: milled.grooves.slice(1) };
        const [grooved, plain] = [milled, fewer].map((m) => findStrength({ ring: ringOf(m), milled: m }));
        expect(grooved.torsion.below).toBeLessThan(plain.torsion.above);
        expect(grooved.torsion.best).toBeLessThan(plain.torsion.best);
        expect(grooved.plasticTorque.below).toBeLessThan(plain.plasticTorque.above);
        expect(grooved.area).toBeLessThan(plain.area);
      },
    ),
    { numRuns: 6, seed: 8 },
  );
});

test('a blade by its description and by its polygon of chords: the same within what chords leave out', () => {
  fc.assert(
    fc.property(blade, (milled) => {
      const [arcs, chords] = [findStrength({ ring: ringOf(milled), milled }), findStrength({ ring: ringOf(milled) })];
      expect(Math.abs(arcs.torsion.best / chords.torsion.best - 1)).toBeLessThan(0.004);
      expect(Math.abs(arcs.area / chords.area - 1)).toBeLessThan(0.001);
    }),
    { numRuns: 5, seed: 9 },
  );
});
