import { describe, expect, test } from 'vitest';
import { goesIn, judgeFit } from '../../../src/fit/judge-fit.ts';
import { goesInTilted, judgeTilted, judgeTiltedEntry } from '../../../src/fit/judge-tilted.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { turnBlank } from '../../../src/fit/turn-blank.ts';
import { verifyFit } from '../../../src/fit/verify-fit.ts';
import { boxOfMm, turned, wardedKeyway } from '../../kit/shapes.ts';

const RUNNING = 40_000;
const rad = (degrees: number) => (degrees * Math.PI) / 180;
const blade = boxOfMm(2, 8.4);

describe('a blank that may lean', () => {
  test.each([1, -1.5, 0.4])('finds the angle of a keyway that leans by %s degrees, and its full clearance', (lean) => {
    const opening = prepareOpening(turned(boxOfMm(2.1, 8.5), lean));
    const fit = judgeTilted(opening, [blade], RUNNING, rad(2));
    expect(fit.verdict).toBe('enters');
    expect(fit.clearance).toBeGreaterThan(50_000 - 1_010);
    expect(fit.clearance).toBeLessThanOrEqual(50_002);
    expect((fit.placement.tilt * 180) / Math.PI).toBeCloseTo(lean, 1);
    expect(verifyFit(turned(boxOfMm(2.1, 8.5), lean), blade, fit)).toEqual([]);
  });

  test('upright only, the limit is zero: the same as without tilt', () => {
    const opening = prepareOpening(turned(boxOfMm(2.1, 8.5), 1));
    expect(judgeTilted(opening, [blade], RUNNING, 0)).toEqual(judgeFit(opening, prepareBlank(blade), RUNNING));
  });

  test('a keyway that leans further than the limit stays closed at every angle up to it', () => {
    const opening = prepareOpening(turned(boxOfMm(2.1, 8.5), 2.5));
    expect(goesInTilted(opening, [blade], rad(1))).toBe(false);
    expect(judgeTiltedEntry(opening, [blade], RUNNING, rad(1)).verdict).toBe('blocked');
    for (let k = -40; k <= 40; k++) {
      const leaning = prepareBlank(turnBlank([blade], rad(k / 40)));
      expect(goesIn(opening, leaning)).toBe(false);
    }
    expect(goesInTilted(opening, [blade], rad(3))).toBe(true);
  });

  test('leaning never makes it worse, and a ward still blocks', () => {
    const opening = prepareOpening(wardedKeyway(0.6));
    const upright = judgeFit(opening, prepareBlank(blade), RUNNING);
    const leaning = judgeTilted(opening, [blade], RUNNING, rad(2));
    expect(leaning.clearance).toBeGreaterThanOrEqual(upright.clearance);
    expect(leaning.verdict).toBe('blocked');
  });
});
