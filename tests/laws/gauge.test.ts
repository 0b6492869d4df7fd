import { describe, expect, test } from 'vitest';
import { openingsOf } from '../../src/family/family.ts';
import { goesIn } from '../../src/fit/judge-fit.ts';
import { goesInTilted } from '../../src/fit/judge-tilted.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import { envelopeOf } from '../../src/gauge/family-limit.ts';
import { pinchAtTilt, pinchOnCurve } from '../../src/gauge/pinch.ts';
import {
  findingCurve,
  heightAt,
  type ThicknessCurve,
  tallestOf,
  thicknessAt,
  uprightCurve,
} from '../../src/gauge/thickness-curve.ts';
import { boxOf, type Point } from '../../src/geom/point.ts';
import type { Ring } from '../../src/geom/ring.ts';
import { sightLine } from '../../src/plan/sight-line.ts';
import { sightOf } from '../../src/profile/sight-line.ts';
import { rectangle } from '../cases/fit-case.ts';
import { keywayPair } from '../cases/keyway-pairs.ts';
import { polygonPair } from '../cases/polygon-pairs.ts';
import { demoFamily } from '../kit/demo-family.ts';
import { soundRing } from '../kit/shapes.ts';

/** Keyways with wards, and stars, combs and corridors with undercuts and legs. */
const OPENINGS: readonly Ring[] = [
  ...Array.from({ length: 12 }, (_, seed) => soundRing(keywayPair(seed, seed % 3 === 0 ? 60 : 20).opening.outer)),
  ...Array.from({ length: 24 }, (_, seed) => soundRing(polygonPair(seed).opening.outer)),
];

/** Heights over a curve: shares of its tallest, and just at and above its jumps. */
function heightsOf(curve: ThicknessCurve): number[] {
  const top = tallestOf(curve);
  const jumps = curve.knots.flatMap(({ height }, i) => (curve.knots[i + 1]?.height === height ? [height] : []));
  const shares = [0.05, 0.22, 0.41, 0.6, 0.83, 0.97].map((share) => Math.round(share * top));
  return [...shares, ...jumps.slice(0, 4).flatMap((height) => [Math.floor(height), Math.floor(height) + 1])];
}

const strip = (thickness: number, height: number) => soundRing(rectangle(0, 0, thickness, height));

function tilted(ring: Ring, limit: number): ThicknessCurve {
  const steps = findingCurve('k', ring, limit);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

describe('upright', () => {
  test('the fit core lets in a strip just below the curve and stops one just above', () => {
    let looked = 0;
    for (const ring of OPENINGS) {
      const [curve, opening] = [uprightCurve('k', ring), prepareOpening(ring)];
      for (const height of heightsOf(curve)) {
        const thickness = Math.floor(thicknessAt(curve, height));
        if (height < 1_000) continue;
        if (thickness >= 1_000) expect(goesIn(opening, prepareBlank(strip(thickness, height)))).toBe(true);
        expect(goesIn(opening, prepareBlank(strip(thickness + 2, height)))).toBe(false);
        looked++;
      }
    }
    expect(looked).toBeGreaterThan(250);
  });

  test('it falls with height and ends at nothing', () => {
    for (const ring of OPENINGS) {
      const { knots } = uprightCurve('k', ring);
      knots.slice(1).forEach((knot, i) => {
        expect(knot.height).toBeGreaterThanOrEqual(knots[i].height);
        expect(knot.thickness).toBeLessThanOrEqual(knots[i].thickness);
      });
      expect(knots[0].height).toBe(0);
    }
  });

  test('shifted, mirrored and upside down it is the same', () => {
    for (const ring of OPENINGS) {
      const curve = uprightCurve('k', ring);
      for (const move of [
        ({ x, y }: Point) => ({ x: x + 1_234_567, y: y - 765_432 }),
        ({ x, y }: Point) => ({ x: -x, y }),
        ({ x, y }: Point) => ({ x, y: -y }),
      ]) {
        const moved = uprightCurve('k', soundRing(ring.map(move)));
        for (const height of heightsOf(curve))
          expect(Math.abs(thicknessAt(moved, height) - thicknessAt(curve, height))).toBeLessThan(0.1);
      }
    }
  });

  test('laid on its side, height and thickness change places', () => {
    for (const ring of OPENINGS) {
      const curve = uprightCurve('k', ring);
      const side = uprightCurve('k', soundRing(ring.map(({ x, y }) => ({ x: y, y: x }))));
      for (const { height, thickness } of curve.knots)
        if (thickness > 0 && height > 0) expect(heightAt(side, height - 0.01) ?? 0).toBeGreaterThan(thickness - 0.1);
    }
  });

  test('the pinch stands in the opening as thick as the curve says, and touches on both sides', () => {
    for (const ring of OPENINGS) {
      const curve = uprightCurve('k', ring);
      for (const height of heightsOf(curve)) {
        const thickness = thicknessAt(curve, height);
        const pinch = pinchAtTilt(ring, height, 0);
        if (thickness < 1_000) continue;
        expect(Math.abs((pinch?.thickness ?? 0) - thickness)).toBeLessThan(0.01);
        const sides = pinch?.touches.map(({ side }) => side);
        expect(sides).toContain('left');
        expect(sides).toContain('right');
      }
    }
  });
});

describe('a family', () => {
  test('the envelope is the least of its curves, and names all that are the least', () => {
    const curves = OPENINGS.slice(0, 12).map((ring, i) => uprightCurve(`k${i}`, ring));
    const limit = envelopeOf(curves);
    const twins = envelopeOf(curves.flatMap((curve) => [curve, { ...curve, openingId: `${curve.openingId} twin` }]));
    const twice = limit.stretches.map(({ openingIds }) => openingIds.flatMap((id) => [id, `${id} twin`]));
    expect(twins.stretches.map(({ openingIds }) => openingIds)).toEqual(twice);
    for (let height = 0; height <= tallestOf(limit) * 1.1; height += tallestOf(limit) / 397) {
      const least = Math.min(...curves.map((curve) => thicknessAt(curve, height)));
      expect(Math.abs(thicknessAt(limit, height) - least)).toBeLessThan(0.01);
      const stretch = limit.stretches.find(({ from, to }) => height > from && height <= to);
      const setters = curves.filter(({ openingId }) => stretch?.openingIds.includes(openingId));
      if (stretch) expect(setters.length).toBeGreaterThan(0);
      for (const setter of setters) expect(Math.abs(thicknessAt(setter, height) - least)).toBeLessThan(1);
    }
  });

  test('drawn keyways have the line of sight and the reach of their grooves', () => {
    for (const { id, ring, milled } of openingsOf(demoFamily())) {
      if (!milled) continue;
      const { left, right, paracentric, strip: open } = sightLine(id, milled);
      const drawn = sightOf(ring);
      const sided = (side: string) => milled.grooves.some((groove) => groove.side === side);
      expect(drawn.paracentric).toBe(paracentric);
      expect(Math.abs(drawn.strip - open)).toBeLessThan(2);
      if (sided('left')) expect(Math.abs(drawn.left - left)).toBeLessThan(2);
      if (sided('right')) expect(Math.abs(drawn.right - right)).toBeLessThan(2);
    }
  });
});

describe('tilted', () => {
  const limit = (2 * Math.PI) / 180;
  const cases = OPENINGS.filter((ring) => ring.length <= 40).filter((_, i) => i % 4 === 0);

  test('it is never thinner, and its strips stand in the opening at their tilt', () => {
    for (const ring of cases) {
      const [upright, curve] = [uprightCurve('k', ring), tilted(ring, limit)];
      for (const height of [...heightsOf(upright), ...heightsOf(curve)]) {
        const thickness = thicknessAt(curve, height);
        expect(thickness).toBeGreaterThan(thicknessAt(upright, height) - 0.01);
        if (thickness < 1_000) continue;
        const pinch = pinchOnCurve(curve, ring, height);
        expect(pinch?.thickness ?? 0).toBeGreaterThan(thickness - 0.1);
        expect(Math.abs(pinch?.tilt ?? 0)).toBeLessThanOrEqual(limit);
      }
    }
  });

  test('the fit core lets in a strip of the curve at some tilt, and at none one that is thicker and taller', () => {
    let looked = 0;
    for (const ring of cases) {
      const opening = prepareOpening(ring);
      const curve = tilted(ring, limit);
      const top = tallestOf(curve);
      for (const share of [0.2, 0.5, 0.8, 0.95]) {
        const height = Math.round(share * top);
        const thickness = Math.floor(thicknessAt(curve, height));
        if (thickness < 20_000) continue;
        expect(goesInTilted(opening, [strip(thickness - 3_000, height - 3_000)], limit)).toBe(true);
        expect(goesInTilted(opening, [strip(thickness + 1_003, height + 1_003)], limit)).toBe(false);
        looked++;
      }
    }
    expect(looked).toBeGreaterThan(15);
  });

  test('a wider limit is never thinner by more than the curves may be off', () => {
    for (const ring of cases.slice(0, 3)) {
      const [narrow, wide] = [tilted(ring, limit / 2), tilted(ring, limit)];
      for (const height of heightsOf(narrow))
        expect(thicknessAt(wide, height - 1_000)).toBeGreaterThanOrEqual(thicknessAt(narrow, height) - 1_000);
    }
  });
});

test('openings whose height is next to nothing are no trouble', () => {
  const flat = soundRing(rectangle(0, 0, 2e6, 3));
  expect(uprightCurve('k', flat).knots).toEqual([
    { height: 0, thickness: 2e6 },
    { height: 3, thickness: 2e6 },
  ]);
  expect(boxOf(flat).maxY).toBe(3);
});
