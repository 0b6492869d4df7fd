import { expect, test } from 'vitest';
import { openingsOf } from '../../../src/family/family.ts';
import { plainConditions } from '../../../src/fit/conditions.ts';
import { blankUnder, judgePairEntry, openingUnder } from '../../../src/fit/judge-pair.ts';
import { judgeStrip, whyTight } from '../../../src/gauge/judge-strip.ts';
import { findingCurve, thicknessAt, uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { asTrustedRing, type Ring } from '../../../src/geom/ring.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { boxOfMm } from '../../kit/shapes.ts';
import { finish } from '../../kit/traced.ts';

const GAP = 40_000;
const SLOT = boxOfMm(1.5, 8);
const OPENINGS = openingsOf(demoFamily());

function judged(opening: Ring, thicknessMm: number, heightMm: number, gap = GAP) {
  const strip = { thickness: Math.round(thicknessMm * 1e6), height: Math.round(heightMm * 1e6) };
  return judgeStrip(uprightCurve('k', opening), opening, strip, gap);
}

function fitOf(opening: Ring, thickness: number, height: number, tiltLimit: number) {
  const conditions = { ...plainConditions(GAP), tiltLimit };
  const strip = boxOfMm(thickness / 1e6, height / 1e6);
  return judgePairEntry(openingUnder(opening, conditions), blankUnder(strip, conditions), conditions);
}

test('in a slot: half of what is spare stands on either side, above and below', () => {
  expect(judged(SLOT, 1.4, 6)).toBe('enters');
  expect(judged(SLOT, 1.42, 6)).toBe('enters');
  expect(judged(SLOT, 1.421, 6)).toBe('tight');
  expect(judged(SLOT, 1.5, 6)).toBe('tight');
  expect(judged(SLOT, 1.501, 6)).toBe('blocked');
  expect(judged(SLOT, 1, 7.92)).toBe('enters');
  expect(judged(SLOT, 1, 7.921)).toBe('tight');
  expect(judged(SLOT, 1, 8.001)).toBe('blocked');
});

/** A slot 2 mm wide and 8 mm tall, 1 mm wide from a height on; millimetres. */
function wardedFrom(step: number): Ring {
  return asTrustedRing(
    [
      [0, 0],
      [2, 0],
      [2, step],
      [1, step],
      [1, 8],
      [0, 8],
    ].map(([x, y]) => ({ x: x * 1e6, y: y * 1e6 })),
  );
}

test('what makes a strip tight: its thickness, its height, both', () => {
  const why = (thickness: number, height: number) =>
    whyTight(uprightCurve('k', SLOT), { thickness: thickness * 1e6, height: height * 1e6 }, GAP);
  expect(why(1.45, 6)).toBe('thickness');
  expect(why(1.1, 7.95)).toBe('height');
  expect(why(1.45, 7.95)).toBe('both');
  // 0.03 mm lower it would stand below the step with 0.04 mm on every side; to pass it, it would have to be 0.078 mm thinner.
  const stepped = wardedFrom(5);
  const strip = { thickness: 0.998e6, height: 4.95e6 };
  expect(whyTight(uprightCurve('k', stepped), strip, GAP)).toBe('height');
});

test('without a running clearance what goes in enters, but for contact', () => {
  expect(judged(SLOT, 1.499, 7.999, 0)).toBe('enters');
  expect(judged(SLOT, 1.5, 6, 0)).toBe('tight');
  expect(judged(SLOT, 1, 8, 0)).toBe('tight');
});

test('upright it is the verdict of the full fit, round about the running clearance and where corners are rounded', () => {
  const told = new Map<string, number>();
  for (const { ring } of OPENINGS.slice(0, 4))
    for (const height of [3e6, 6.1e6, 7.2e6, 8.3e6, 8.41e6, 8.44e6])
      for (const spare of [0, 40e3, 75e3, 79e3, 80e3, 82e3, 90e3, 105e3]) {
        const curve = uprightCurve('k', ring);
        const thickness = Math.floor(thicknessAt(curve, height) - spare);
        if (thickness < 10_000) continue;
        const verdict = judgeStrip(curve, ring, { thickness, height }, GAP);
        expect(verdict).toBe(fitOf(ring, thickness, height, 0).verdict);
        told.set(verdict, (told.get(verdict) ?? 0) + 1);
      }
  expect(told.get('enters')).toBeGreaterThan(20);
  expect(told.get('tight')).toBeGreaterThan(20);
});

test('tilted, what enters has the clearance, and what is tight has at most the root of two times it', () => {
  const limit = 0.02;
  const [{ ring }] = OPENINGS;
  const curve = finish(findingCurve('k', ring, limit));
  for (const height of [3e6, 8.3e6])
    for (const spare of [20e3, 90e3, 140e3]) {
      const thickness = Math.floor(thicknessAt(curve, height) - spare);
      const verdict = judgeStrip(curve, ring, { thickness, height }, GAP);
      const { clearance } = fitOf(ring, thickness, height, limit);
      if (verdict === 'enters') expect(clearance).toBeGreaterThan(GAP - 1_100);
      else expect(clearance).toBeLessThan(GAP * Math.SQRT2 + 6_000);
    }
});
