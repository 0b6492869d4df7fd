// How a margin must follow the outlines: growing, shrinking, nesting; what it means beside the verdict.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Fit } from '../../src/fit/fit.ts';
import { goesIn } from '../../src/fit/judge-fit.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import { intersection, offset, union } from '../../src/geom/clip.ts';
import { boxOf } from '../../src/geom/point.ts';
import { type Region, regionOf } from '../../src/geom/region.ts';
import { makeRing, type Ring } from '../../src/geom/ring.ts';
import { fitOf, holds, holdsWith, RUNNING } from './blade-pairs.ts';

/** Arc tolerance of an offset by `r` here, nanometres: fine, but without arcs of a thousand chords. */
const arcFor = (r: number) => Math.max(20, r / 2_000);

/** What an offset by `r` may fall short of the true one, rounding included. */
const lossOf = (r: number) => arcFor(r) + 3;

const percent = fc.integer({ min: 2, max: 95 });

/** The parts of a region as rings, or none where clipping left an outline that touches itself. */
function ringsOf(region: Region): Ring[] | null {
  const made = region.map(({ outer }) => makeRing(outer));
  return made.every((result) => result.ok) ? made.map((result) => (result as { ring: Ring }).ring) : null;
}

/** A rectangle over part of the box of an outline, given in hundredths of it. */
function partOfBox(ring: Ring, [x0, x1, y0, y1]: readonly number[]): Region {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  const [left, right] = [Math.min(x0, x1), Math.max(x0, x1) + 1].map((c) =>
    Math.round(minX + ((maxX - minX) * c) / 100),
  );
  const [low, high] = [Math.min(y0, y1), Math.max(y0, y1) + 1].map((c) => Math.round(minY + ((maxY - minY) * c) / 100));
  const made = makeRing([
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ]);
  return made.ok ? regionOf(made.ring) : [];
}

const hundredths = fc.tuple(fc.nat(99), fc.nat(99), fc.nat(99), fc.nat(99));

/** The clearance fell by r: never by more, and by less only as far as the drawn offset falls short. */
function expectFall(before: Fit, after: Fit, r: number): void {
  const err = before.accuracy + after.accuracy + 0.01;
  expect(after.clearance).toBeGreaterThanOrEqual(before.clearance - r - err - 1);
  expect(after.clearance).toBeLessThanOrEqual(before.clearance - r + err + lossOf(r));
}

describe('a margin', () => {
  test('falls by exactly what the blank grows', () => {
    holdsWith(
      percent,
      ({ opening, blank }, part) => {
        const before = fitOf(opening, blank);
        const r = Math.round((before.clearance * part) / 100);
        fc.pre(before.clearance - r > lossOf(r) + before.accuracy);
        const grown = offset(regionOf(blank), r, 'round', arcFor(r));
        const rings = grown.every(({ holes }) => holes.length === 0) ? ringsOf(grown) : null;
        fc.pre(rings !== null);
        expectFall(before, fitOf(opening, rings), r);
      },
      50,
    );
  });

  test('falls by exactly what the opening shrinks', () => {
    holdsWith(
      percent,
      ({ opening, blank }, part) => {
        const before = fitOf(opening, blank);
        const r = Math.round((before.clearance * part) / 100);
        fc.pre(before.clearance - r > lossOf(r) + before.accuracy);
        expectFall(before, fitOf(offset(regionOf(opening), -r, 'round', arcFor(r)), blank), r);
      },
      50,
    );
  });

  test('shrunk by more than the clearance, a keyway blocks', () => {
    holdsWith(
      percent,
      ({ opening, blank }, more) => {
        const { clearance, accuracy } = fitOf(opening, blank);
        fc.pre(clearance > 0);
        const r = clearance + accuracy + lossOf(clearance) + more * 10;
        const shrunk = offset(regionOf(opening), -r, 'round', arcFor(clearance));
        if (shrunk.length > 0) expect(goesIn(prepareOpening(shrunk), prepareBlank(blank))).toBe(false);
      },
      60,
    );
  });

  test('an interference falls by exactly what the opening grows', () => {
    holdsWith(
      percent,
      ({ opening, blank }, part) => {
        const before = fitOf(opening, blank);
        const d = Math.round((-before.clearance * part) / 100);
        fc.pre(before.verdict === 'blocked' && -before.clearance - d > before.accuracy + lossOf(d) + 10);
        const after = fitOf(offset(regionOf(opening), d, 'round', arcFor(d)), blank);
        expect(after.verdict).toBe('blocked');
        const err = before.accuracy + after.accuracy + lossOf(d);
        expect(Math.abs(after.clearance - (before.clearance + d))).toBeLessThanOrEqual(err);
      },
      60,
    );
  });

  test('grown by more than its interference, a keyway lets the blank in', () => {
    holds(({ opening, blank }) => {
      const { verdict, clearance, accuracy } = fitOf(opening, blank);
      fc.pre(verdict === 'blocked');
      const grown = offset(regionOf(opening), accuracy - clearance + lossOf(-clearance), 'round', arcFor(-clearance));
      expect(goesIn(prepareOpening(grown), prepareBlank(blank))).toBe(true);
    }, 80);
  });

  test('a blank cut down never has less', () => {
    holdsWith(
      hundredths,
      ({ opening, blank }, corners) => {
        const rings = ringsOf(intersection(regionOf(blank), partOfBox(blank, corners)));
        fc.pre(rings !== null && rings.length > 0);
        const [whole, part] = [fitOf(opening, blank), fitOf(opening, rings)];
        expect(part.clearance).toBeGreaterThanOrEqual(whole.clearance - whole.accuracy - part.accuracy - 2);
        if (whole.verdict !== 'blocked') expect(part.verdict).not.toBe('blocked');
      },
      80,
    );
  });

  test('a keyway opened further never gives less', () => {
    holdsWith(
      hundredths,
      ({ opening, blank }, corners) => {
        const wider = union(regionOf(opening), partOfBox(opening, corners));
        const [narrow, wide] = [fitOf(opening, blank), fitOf(wider, blank)];
        expect(wide.clearance).toBeGreaterThanOrEqual(narrow.clearance - narrow.accuracy - wide.accuracy - 2);
        if (narrow.verdict !== 'blocked') expect(wide.verdict).not.toBe('blocked');
      },
      80,
    );
  });

  test('agrees with the verdict, with the play and with whether it goes in at all', () => {
    const seen = new Set<string>();
    holds(({ opening, blank }) => {
      const fit = fitOf(opening, blank);
      seen.add(fit.verdict);
      expect(fit.accuracy).toBeLessThanOrEqual(fit.verdict === 'blocked' ? 1_000 : 51);
      expect(fit.accuracy).toBeGreaterThanOrEqual(0);
      expect(fit.verdict === 'blocked').toBe(fit.clearance < 0);
      expect(fit.verdict === 'blocked').toBe(!goesIn(prepareOpening(opening), prepareBlank(blank)));
      if (fit.verdict === 'enters') expect(fit.clearance).toBeGreaterThanOrEqual(RUNNING - 1);
      if (fit.verdict === 'tight') expect(fit.clearance).toBeLessThan(RUNNING);
      expect(Math.min(fit.play.lateral, fit.play.vertical)).toBeGreaterThanOrEqual(
        2 * Math.max(0, fit.clearance) - 0.1,
      );
    }, 120);
    expect([...seen].sort()).toEqual(['blocked', 'enters', 'tight']);
  });
});
