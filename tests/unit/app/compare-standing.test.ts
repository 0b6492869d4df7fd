import { expect, test } from 'vitest';
import { standCentred } from '../../../src/app/tools/compare/standing-centred.ts';
import { regionOf } from '../../../src/geom/region.ts';
import { asTrustedRing } from '../../../src/geom/ring.ts';

/** A rectangle with its lower left corner at (x, y), in micrometres. */
function rectangle(wide: number, tall: number, x = 0, y = 0) {
  const at = (px: number, py: number) => ({ x: px * 1000, y: py * 1000 });
  return [[at(x, y), at(x + wide, y), at(x + wide, y + tall), at(x, y + tall)]];
}

const keyway = (wide: number, tall: number, x = 0, y = 0) => regionOf(asTrustedRing(rectangle(wide, tall, x, y)[0]));

test('the spare width is left on both sides, the spare height above and below', () => {
  // 2.10 - 2.00 leaves 0.05 on each side, 8.60 - 8.40 leaves 0.10 above and below.
  const stood = standCentred(keyway(2100, 8600), rectangle(2000, 8400));
  expect(stood).toEqual({ x: 50_000, y: 100_000, tilt: 0 });
});

test('where the outlines begin does not matter', () => {
  const stood = standCentred(keyway(2100, 8600, 500, -300), rectangle(2000, 8400, -1000, 40));
  expect(stood).toEqual({ x: 1_550_000, y: -240_000, tilt: 0 });
});

test('a blank that is too tall stands on the floor, one that is too wide as far in on both sides', () => {
  const stood = standCentred(keyway(2000, 8000), rectangle(2200, 8400));
  expect(stood).toEqual({ x: -100_000, y: 0, tilt: 0 });
});

test('all of a keyway and all pieces of a worn blank count', () => {
  const blank = [...rectangle(2000, 3000), ...rectangle(2000, 3000, 0, 5400)];
  expect(standCentred(keyway(2100, 8600), blank)).toEqual({ x: 50_000, y: 100_000, tilt: 0 });
});
