import { describe, expect, test } from 'vitest';
import { judgeFit } from '../../../src/fit/judge-fit.ts';
import { judgeTolerance } from '../../../src/fit/judge-tolerance.ts';
import { growOpening, shrinkBlank } from '../../../src/fit/offset-shapes.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { boxOfMm, wardedKeyway } from '../../kit/shapes.ts';

const blade = boxOfMm(2, 8.4);
const keyway = prepareOpening(boxOfMm(2.1, 8.5));

function wordFor(opening: typeof keyway, blank: number, open: number) {
  const fit = judgeFit(opening, prepareBlank(blade), 40_000);
  return judgeTolerance(opening, [blade], fit, { blank, opening: open });
}

describe('parts within their tolerance', () => {
  test('a gap of 50 um all round always takes bands that add up to 50 um, and no more', () => {
    expect(wordFor(keyway, 30_000, 20_000)).toBe('always');
    expect(wordFor(keyway, 30_000, 20_010)).toBe('depends');
  });

  test('the worst parts agree: at 50 um they touch, at 51 um they do not go together', () => {
    const worst = (band: number) => {
      const narrow = growOpening(keyway.region, -band);
      const full = shrinkBlank(blade, -25_000);
      if (!narrow || !full) throw new Error('nothing left');
      return judgeFit(narrow, full, 40_000).verdict;
    };
    expect(worst(24_900)).not.toBe('blocked');
    expect(worst(26_000)).toBe('blocked');
  });

  test('a ward 0.6 mm deep is never passed within small bands, and may be within large ones', () => {
    const warded = prepareOpening(wardedKeyway(0.6));
    expect(wordFor(warded, 20_000, 20_000)).toBe('never');
    expect(wordFor(warded, 130_000, 130_000)).toBe('depends');
  });
});
