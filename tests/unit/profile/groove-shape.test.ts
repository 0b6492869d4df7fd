import { expect, test } from 'vitest';
import { arcReach, distanceFromShape } from '../../../src/profile/groove-shape.ts';

const square = { low: 1_000, high: 3_000, depth: 800, lean: 0, radius: 0 };

test('a square groove: distances from land, flank and root, positive in the groove', () => {
  const at = (up: number, inward: number) => distanceFromShape(square, { up, in: inward });
  expect(at(500, 40)).toEqual({ signed: -40, part: 'land' });
  expect(at(1_050, 400)).toEqual({ signed: 50, part: 'flank' });
  expect(at(2_000, 900)).toEqual({ signed: -100, part: 'root' });
  expect(at(2_000, 700)).toEqual({ signed: 100, part: 'root' });
  expect(at(2_970, 400).signed).toBe(30);
});

test('a rounded root: the arc is nearest in its sector, at the radius from its centre', () => {
  const rounded = { ...square, radius: 300 };
  const centre = { up: 1_300, in: 500 };
  const out = (angle: number, r: number) => ({
    up: centre.up - r * Math.cos(angle),
    in: centre.in + r * Math.sin(angle),
  });
  expect(distanceFromShape(rounded, out(0.7, 310))).toMatchObject({ part: 'arc' });
  expect(distanceFromShape(rounded, out(0.7, 310)).signed).toBeCloseTo(-10, 6);
  expect(distanceFromShape(rounded, out(0.7, 290)).signed).toBeCloseTo(10, 6);
});

test('an arc tangent to a square flank reaches its radius, and to one at 30 degrees r tan 30', () => {
  expect(arcReach(300, 0)).toBeCloseTo(300, 9);
  expect(arcReach(300, Math.tan(Math.PI / 6))).toBeCloseTo(300 * Math.tan(Math.PI / 6), 9);
});

test('a step has no flank on the side that runs out', () => {
  expect(distanceFromShape({ ...square, low: null }, { up: -5_000, in: 790 })).toEqual({ signed: 10, part: 'root' });
});
