// ISO 286-1:2010 fits of a tongue in a slot, as outlines at the middle of their limits with a uniform tolerance.
//
// Sources. Standard tolerances IT6 to IT11 for sizes up to 18 mm: ISO 286-1:2010, seen as a table. Upper deviations of
// the shafts c, f, g, h: ISO 286-1:2010, from memory; the least and greatest clearances that follow agree with two
// published pages. 50 H7/g6 (hole 50.000 to 50.025, shaft 49.975 to 49.991, clearance 9 to 50 um): a published worked
// example, seen. Fits without a source are our own arithmetic, and say so.
//
// Arithmetic. A width within +0 and +IT has its middle at IT/2 and lies within IT/2 of it; each of its two faces bears
// half of that, so the outline deviates by IT/4 to either side. The gap on each side is half of the clearance. With the
// gap at the middle of the limits g and both bands t: g - t(slot) - t(tongue) = half of the least clearance, and
// g + t(slot) + t(tongue) = half of the greatest. The slot is 2 mm higher than the tongue, so that the width decides.

import { describe, expect, test } from 'vitest';
import type { Fit } from '../../src/fit/fit.ts';
import { judgeFit } from '../../src/fit/judge-fit.ts';
import { type Bands, judgeTolerance, type ThreeWay } from '../../src/fit/judge-tolerance.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import { rectangle } from '../cases/fit-case.ts';
import { ringOf } from '../kit/engines/core-answer.ts';

/** Lower and upper deviation from the nominal size, um. */
type Limits = readonly [lower: number, upper: number];

interface ToleratedFit {
  readonly fit: Fit;
  readonly bands: Bands;
  readonly threeWay: ThreeWay;
}

/** A tongue of `size` mm and limits `shaft` in a slot of that size and limits `hole`. */
function slotAndTongue(size: number, hole: Limits, shaft: Limits): ToleratedFit {
  const slot = prepareOpening(upright(size * 1e6 + 500 * (hole[0] + hole[1]), 10e6));
  const tongue = upright(size * 1e6 + 500 * (shaft[0] + shaft[1]), 8e6);
  const fit = judgeFit(slot, prepareBlank(tongue), 0);
  const bands = { opening: 250 * (hole[1] - hole[0]), blank: 250 * (shaft[1] - shaft[0]) };
  return { fit, bands, threeWay: judgeTolerance(slot, [tongue], fit, bands) };
}

/** A rectangle as wide and as high, nanometres, about the origin across. */
function upright(width: number, height: number) {
  return ringOf(rectangle(-Math.floor(width / 2), 0, width, height));
}

/** Size in mm, deviations and clearances in um, as in print. */
const WORKED: readonly [name: string, size: number, hole: Limits, shaft: Limits, least: number, greatest: number][] = [
  ['2.5 H7/g6', 2.5, [0, 10], [-8, -2], 2, 18],
  ['5 H7/g6', 5, [0, 12], [-12, -4], 4, 24],
  ['8 H7/g6', 8, [0, 15], [-14, -5], 5, 29],
  ['12 H7/g6', 12, [0, 18], [-17, -6], 6, 35],
  ['8 H8/f7', 8, [0, 22], [-28, -13], 13, 50],
  ['8 H7/h6', 8, [0, 15], [-9, 0], 0, 24],
  ['5 H11/c11', 5, [0, 75], [-145, -70], 70, 220],
  ['50 H7/g6', 50, [0, 25], [-25, -9], 9, 50],
];

describe.each(WORKED)('%s', (_, size, hole, shaft, least, greatest) => {
  const { fit, bands, threeWay } = slotAndTongue(size, hole, shaft);

  test('the gap at the middle of the limits, less and plus both bands, is half the least and greatest clearance', () => {
    const both = bands.opening + bands.blank;
    // To 1 nm: the outlines are whole nanometres, and the clearance of parallel faces is exact.
    expect(Math.abs(fit.clearance - both - 500 * least)).toBeLessThanOrEqual(1);
    expect(Math.abs(fit.clearance + both - 500 * greatest)).toBeLessThanOrEqual(1);
  });

  test('every tongue within its limits goes into every slot within its limits', () => {
    expect(threeWay).toBe('always');
  });

  test('with the tongue so much larger that the limits overlap by 1 um, it depends on the parts', () => {
    const larger: Limits = [shaft[0] + least + 1, shaft[1] + least + 1];
    expect(slotAndTongue(size, hole, larger).threeWay).toBe('depends');
  });

  test('with the tongue so much larger that even the greatest clearance is 1 um too small, none goes in', () => {
    const larger: Limits = [shaft[0] + greatest + 1, shaft[1] + greatest + 1];
    expect(slotAndTongue(size, hole, larger).threeWay).toBe('never');
  });
});

test('H7/h6: the largest tongue is as wide as the smallest slot, and contact counts as going in (sets are closed)', () => {
  const { fit, bands, threeWay } = slotAndTongue(8, [0, 15], [-9, 0]);
  expect(fit.clearance).toBeCloseTo(bands.opening + bands.blank, 6);
  expect(threeWay).toBe('always');
  const atLimits = judgeFit(prepareOpening(upright(8e6, 10e6)), prepareBlank(upright(8e6, 8e6)), 0);
  expect([atLimits.verdict, atLimits.clearance]).toEqual(['tight', 0]);
});

describe('fits of our own arithmetic, 8 mm, no source', () => {
  test('transition: slot 0 to +15, tongue +1 to +10; clearance -10 to +14: depends', () => {
    const { fit, threeWay } = slotAndTongue(8, [0, 15], [1, 10]);
    expect(fit.clearance).toBeCloseTo(1_000, 6);
    expect(threeWay).toBe('depends');
  });

  test('transition, blocked at the middle: slot 0 to +15, tongue +8 to +17; clearance -17 to +7: depends', () => {
    const { fit, threeWay } = slotAndTongue(8, [0, 15], [8, 17]);
    expect(fit.verdict).toBe('blocked');
    expect(Math.abs(fit.clearance + 2_500)).toBeLessThanOrEqual(fit.accuracy);
    expect(threeWay).toBe('depends');
  });

  test('interference: slot 0 to +15, tongue +20 to +29; clearance -29 to -5: never', () => {
    const { fit, threeWay } = slotAndTongue(8, [0, 15], [20, 29]);
    expect(Math.abs(fit.clearance + 8_500)).toBeLessThanOrEqual(fit.accuracy);
    expect(threeWay).toBe('never');
  });

  test('the smallest tongue as wide as the largest slot: contact goes in, so it depends, and is not never', () => {
    expect(slotAndTongue(8, [0, 15], [15, 24]).threeWay).toBe('depends');
  });

  test('where it depends, the parts at the ends of the limits differ: one pair goes in, one does not', () => {
    const slot = (um: number) => prepareOpening(upright(8e6 + um * 1000, 10e6));
    const tongue = (um: number) => prepareBlank(upright(8e6 + um * 1000, 8e6));
    expect(judgeFit(slot(15), tongue(1), 0).clearance).toBeCloseTo(7_000, 6);
    expect(judgeFit(slot(0), tongue(10), 0).verdict).toBe('blocked');
  });

  test('parts without any tolerance go in always or never, contact always', () => {
    const exactly = (slot: number, tongue: number) => slotAndTongue(8, [slot, slot], [tongue, tongue]).threeWay;
    expect([exactly(0, -1), exactly(0, 0), exactly(0, 1)]).toEqual(['always', 'always', 'never']);
  });
});
