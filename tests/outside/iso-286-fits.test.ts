// ISO 286-1:2010 fits as slot and tongue. Standard tolerances IT from the standard's table for sizes up to 18 mm
// (seen as a table of grades 1-14); fundamental deviations c, f, g, h of shafts from memory (their clearances agree
// with two published pages). Arithmetic: hole H = nominal +0/+IT; shaft = nominal + es - IT / + es. Least clearance =
// hole at its lower limit - shaft at its upper, greatest = hole at its upper limit - shaft at its lower; across a slot
// the gap on either side is half of that.
// Two published worked fits above those sizes: 50 H7/g6 hole 50.000-50.025, shaft 49.975-49.991, clearance 9-50 um;
// 25 H7 hole 25.000-25.021.

import { describe, expect, test, vi } from 'vitest';
import { plainOpening, rectangle } from '../cases/fit-case.ts';
import { coreAnswer } from '../kit/engines/core-answer.ts';

// Two slow cores shared with other work must not fail a correct answer.
vi.setConfig({ testTimeout: 120_000 });

const UM = 1e3;

/** Grade -> um, for sizes over 1-3, 3-6, 6-10, 10-18 mm. */
const IT: Record<string, readonly number[]> = {
  IT6: [6, 8, 9, 11],
  IT7: [10, 12, 15, 18],
  IT8: [14, 18, 22, 27],
  IT11: [60, 75, 90, 110],
};
/** Upper deviation es of a shaft, um, same ranges. */
const UPPER: Record<string, readonly number[]> = {
  c: [-60, -70, -80, -95],
  f: [-6, -10, -13, -16],
  g: [-2, -4, -5, -6],
  h: [0, 0, 0, 0],
};

interface WorkedFit {
  readonly size: number;
  readonly hole: string;
  readonly shaft: string;
  readonly grade: string;
  /** Clearance as worked out in print, um. */
  readonly least: number;
  readonly greatest: number;
}

const workedFits: readonly WorkedFit[] = [
  { size: 2.5, hole: 'IT7', shaft: 'g', grade: 'IT6', least: 2, greatest: 18 },
  { size: 5, hole: 'IT7', shaft: 'g', grade: 'IT6', least: 4, greatest: 24 },
  { size: 8, hole: 'IT7', shaft: 'g', grade: 'IT6', least: 5, greatest: 29 },
  { size: 12, hole: 'IT7', shaft: 'g', grade: 'IT6', least: 6, greatest: 35 },
  { size: 8, hole: 'IT8', shaft: 'f', grade: 'IT7', least: 13, greatest: 50 },
  { size: 8, hole: 'IT7', shaft: 'h', grade: 'IT6', least: 0, greatest: 24 },
  { size: 5, hole: 'IT11', shaft: 'c', grade: 'IT11', least: 70, greatest: 220 },
];

/** Across a slot of `slot` um and a tongue of `tongue` um; 10 mm high against 8, so that only the width binds. */
function acrossSlot(slot: number, tongue: number, runningClearance = 0) {
  const opening = plainOpening(rectangle((-slot * UM) / 2, 0, slot * UM, 10_000_000));
  const { fit } = coreAnswer(
    { opening, blank: rectangle((-tongue * UM) / 2, 0, tongue * UM, 8_000_000) },
    runningClearance,
  );
  return fit;
}

describe.each(workedFits)('$size H/$shaft ($hole, $grade)', ({ size, hole, shaft, grade, least, greatest }) => {
  const range = [3, 6, 10].filter((limit) => size > limit).length;
  const [holeLow, holeHigh] = [size * 1000, size * 1000 + IT[hole][range]];
  const shaftHigh = size * 1000 + UPPER[shaft][range];
  const shaftLow = shaftHigh - IT[grade][range];

  test('tightest parts', () => {
    const fit = acrossSlot(holeLow, shaftHigh);
    expect(fit.clearance).toBeCloseTo((least * UM) / 2, 6);
    expect(fit.play.lateral).toBeCloseTo(least * UM, 6);
  });

  test('loosest parts', () => {
    const fit = acrossSlot(holeHigh, shaftLow);
    expect(fit.clearance).toBeCloseTo((greatest * UM) / 2, 6);
    expect(fit.play.lateral).toBeCloseTo(greatest * UM, 6);
  });

  test('the verdict turns at half the clearance', () => {
    const half = (greatest * UM) / 2;
    expect(acrossSlot(holeHigh, shaftLow, half).verdict).toBe('enters');
    expect(acrossSlot(holeHigh, shaftLow, half + 2).verdict).toBe('tight');
  });

  test('one micrometre beyond contact is blocked by half of it', () => {
    const fit = acrossSlot(holeLow, holeLow + 1);
    expect(fit.verdict).toBe('blocked');
    expect(Math.abs(-fit.clearance - UM / 2)).toBeLessThanOrEqual(fit.accuracy + 1e-6);
  });
});

test('a transition at h: the tightest H7/h6 is contact, clearance 0, tight', () => {
  const fit = acrossSlot(8000, 8000, 1);
  expect(fit.clearance).toBe(0);
  expect(fit.verdict).toBe('tight');
});

test('50 H7/g6 as published: clearance 9 to 50 um', () => {
  expect(acrossSlot(50_000, 49_991).clearance).toBeCloseTo(4500, 6);
  expect(acrossSlot(50_025, 49_975).clearance).toBeCloseTo(25_000, 6);
});
