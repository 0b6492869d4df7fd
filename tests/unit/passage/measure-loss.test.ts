import { expect, test } from 'vitest';
import { regionOf } from '../../../src/geom/region.ts';
import { measureLoss } from '../../../src/passage/measure-loss.ts';
import { moveRegion } from '../../../src/passage/overlap-regions.ts';
import { boxOfMm } from '../../kit/shapes.ts';

/*
 * Closed forms: a rectangle less a rectangle.
 */

const MM = 1e6;
const MM2 = 1e12;

const blank = boxOfMm(2, 8);

/** A room of this size whose lower left corner lies there, against the blank of 2 x 8 mm at the origin. */
const lossOf = (width: number, height: number, x: number, y: number) =>
  measureLoss(moveRegion(regionOf(boxOfMm(width, height)), { x: x * MM, y: y * MM }), blank);

test('a room that the blank fills has no loss', () => {
  expect(lossOf(2, 8, 0, 0)).toEqual({ own: 16 * MM2, area: 0, share: 0, places: [], region: [] });
});

test('each side has its name, its heights and its area', () => {
  const told = (loss: ReturnType<typeof lossOf>) => loss.places.map(({ side, from, to }) => [side, from / MM, to / MM]);
  const left = lossOf(3, 8, -1, 0);
  expect(told(left)).toEqual([['left', 0, 8]]);
  expect(left.area / MM2).toBeCloseTo(8, 6);
  expect(left.share).toBeCloseTo(8 / 24, 6);
  expect(left.places[0].area / MM2).toBeCloseTo(8, 6);
  expect(told(lossOf(3, 8, 0, 0))).toEqual([['right', 0, 8]]);
  expect(told(lossOf(2, 9, 0, 0))).toEqual([['above', 8, 9]]);
  expect(told(lossOf(2, 9, 0, -1))).toEqual([['below', -1, 0]]);
  expect(told(lossOf(4, 10, -1, -1))).toEqual([['around', -1, 9]]);
});

test('of two places the larger comes first', () => {
  const { places } = lossOf(2, 11, 0, -1);
  expect(places.map(({ side }) => side)).toEqual(['above', 'below']);
});

test('a rim thinner than 0.05 mm counts in the area but is no place', () => {
  const thin = lossOf(2.04, 8, 0, 0);
  expect(thin.area / MM2).toBeCloseTo(0.32, 6);
  expect(thin.places).toEqual([]);
  expect(lossOf(2.06, 8, 0, 0).places.length).toBe(1);
});

test('a room of no area has no share', () => {
  expect(measureLoss([], blank)).toEqual({ own: 0, area: 0, share: 0, places: [], region: [] });
});
