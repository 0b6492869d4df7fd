import { expect, test } from 'vitest';
import { uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { areaUnder, measureWords, rankTightness } from '../../../src/gauge/tightness.ts';
import { boxOfMm, wardedKeyway } from '../../kit/shapes.ts';

const MM = 1e6;
const curves = [
  uprightCurve('wide', boxOfMm(2, 8)),
  uprightCurve('warded', wardedKeyway(0.7)),
  uprightCurve('low', boxOfMm(2.5, 4)),
  uprightCurve('twin', boxOfMm(2, 8)),
];

test('by a height: the thinnest strip first, equally tight ones share a rank', () => {
  const ranked = rankTightness(curves, { by: 'height', height: 6 * MM });
  expect(ranked.map(({ openingId, rank, measure }) => [openingId, rank, measure])).toEqual([
    ['low', 1, 0],
    ['warded', 2, 1.4 * MM],
    ['wide', 3, 2 * MM],
    ['twin', 3, 2 * MM],
  ]);
});

test('tilted curves share a rank where they are nearer to each other than they are found', () => {
  const [first] = curves;
  const thicker = (by: number) => ({
    ...{ ...first, openingId: String(by), accuracy: 1_000 },
    knots: first.knots.map((knot) => ({ ...knot, thickness: knot.thickness + by })),
  });
  // The third is near the second, but not near the first of the rank.
  const ranked = rankTightness([thicker(0), thicker(700), thicker(1_400)], { by: 'height', height: 6 * MM });
  expect(ranked.map(({ rank }) => rank)).toEqual([1, 1, 3]);
});

test('by the mean over all heights up to the tallest of all', () => {
  // Areas: 2 x 8 = 16, 2.1 x 4.6 + 1.4 x 3.9 = 15.12, 2.5 x 4 = 10; over 8.5 mm.
  const ranked = rankTightness(curves, { by: 'mean' });
  expect(ranked.map(({ openingId }) => openingId)).toEqual(['low', 'warded', 'wide', 'twin']);
  expect(ranked.map(({ mean }) => mean / MM)).toEqual([10, 15.12, 16, 16].map((area) => expect.closeTo(area / 8.5, 9)));
  expect(areaUnder(curves[1]) / MM / MM).toBeCloseTo(15.12, 9);
  expect(ranked[0]).toMatchObject({ thickest: 2.5 * MM, tallest: 4 * MM, rank: 1 });
});

test('nothing to rank', () => {
  expect(rankTightness([], { by: 'mean' })).toEqual([]);
});

test('the measure is explained', () => {
  expect(measureWords({ by: 'height', height: 6 * MM }, () => '6 mm')).toMatch(/thickest straight strip 6 mm tall/);
  expect(measureWords({ by: 'mean' }, () => '')).toMatch(/mean thickness/);
});
