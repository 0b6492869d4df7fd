import { expect, test } from 'vitest';
import { measureWeb } from '../../../src/profile/measure-web.ts';
import { millOutline } from '../../../src/profile/mill-outline.ts';
import type { Groove, Milled } from '../../../src/profile/profile.ts';
import { thinnestWeb } from '../../../src/profile/thinnest-web.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';
import { soundRing } from '../../kit/shapes.ts';

const MM = 1e6;

const groove = (side: Groove['side'], bottom: number, depth: number, rootRadius = 0): Groove => ({
  side,
  bottom: bottom * MM,
  width: MM,
  depth: depth * MM,
  flank: 0,
  rootRadius: rootRadius * MM,
});

const blade = (grooves: Groove[], backRadius = 0): Milled => ({
  thickness: 2 * MM,
  height: 8 * MM,
  backRadius,
  grooves,
});

test('a plain blade is as thin as its thickness, marked half way up', () => {
  const web = thinnestWeb(blade([]));
  expect(web).toEqual({ thickness: 2 * MM, left: { x: 0, y: 4 * MM }, right: { x: 2 * MM, y: 4 * MM } });
});

test('a rounded back is no web', () => {
  expect(thinnestWeb(blade([], 0.8 * MM))?.thickness).toBe(2 * MM);
});

test('one groove: what its depth leaves, marked in the middle of its root', () => {
  const web = thinnestWeb(blade([groove('left', 3, 0.6)]));
  expect(web).toEqual({ thickness: 1.4 * MM, left: { x: 0.6 * MM, y: 3.5 * MM }, right: { x: 2 * MM, y: 3.5 * MM } });
});

test('two grooves that share heights: thinnest where both are', () => {
  const web = thinnestWeb(blade([groove('left', 3, 0.6), groove('right', 3.5, 0.7)]));
  expect(web?.thickness).toBeCloseTo(0.7 * MM, 3);
  expect(web?.left.y).toBe(3.75 * MM);
});

test('two grooves one above the other: aslant from corner to corner, by Pythagoras', () => {
  const web = thinnestWeb(blade([groove('left', 2, 1.2), groove('right', 3.03, 0.6)]));
  // From (1.2, 3) to (1.4, 3.03): 0.2 across, 0.03 up.
  expect(web?.thickness).toBeCloseTo(Math.hypot(0.2, 0.03) * MM, 3);
  expect(web?.left).toEqual({ x: 1.2 * MM, y: 3 * MM });
  expect(web?.right).toEqual({ x: 1.4 * MM, y: 3.03 * MM });
});

test('is never thicker than the thinnest level cut', () => {
  let seen = 0;
  for (let seed = 1; seed < 200; seed++) {
    const random = randomNumbers(seed);
    const grooves = Array.from({ length: 3 }, () =>
      groove(random.pick(['left', 'right'] as const), random.whole(5, 68) / 10, random.whole(2, 12) / 10, 0.1),
    );
    const milled = blade(grooves, 0.3 * MM);
    const points = millOutline(milled);
    if (!Array.isArray(points)) continue;
    seen++;
    const web = thinnestWeb(milled);
    expect(web?.thickness).toBeLessThanOrEqual(measureWeb(soundRing(points)).thickness + 1);
    expect(web?.thickness).toBeGreaterThan(0);
  }
  expect(seen).toBeGreaterThan(30);
});

test('a blade that cannot be milled has none', () => {
  expect(thinnestWeb(blade([groove('left', 3, 2.5)]))).toBeNull();
});
