// Largest inscribed circles. L and T junctions, legs b and d, fillet r: diameters 2[d + b + 3r - sqrt(2(2r+b)(2r+d))]
// and ((b+r)^2 + r d + d^2/4)/(2r+b) (b the flange, d the stem); r = 0, b = d = 1: 1.171573 and 1.25. Roark & Young,
// "Formulas for Stress and Strain", junction formulas (from memory; confirmed by plain geometry).
// Triangle: inradius 2A/P (Euclid IV.4). Regular polygon: the apothem. Random shapes: JSTS MaximumInscribedCircle,
// after Garcia-Castellanos & Lombardo, "Poles of inaccessibility", Scottish Geogr. J. 123 (2007) 227-233.

import { describe, expect, test, vi } from 'vitest';
import { inscribedCircle } from '../../src/geom/inscribed-circle.ts';
import type { Point } from '../../src/geom/point.ts';
import type { Region } from '../../src/geom/region.ts';
import { signedArea } from '../../src/geom/signed-area.ts';
import { rectangle } from '../cases/fit-case.ts';
import { hardCircles } from '../cases/hard-circles.ts';
import { keywayPair } from '../cases/keyway-pairs.ts';
import { polygonPair } from '../cases/polygon-pairs.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { ringOf } from '../kit/engines/core-answer.ts';
import { jstsInscribedCircle, jstsPolygon, jstsProbe } from '../kit/engines/jsts-shapes.ts';

// Two slow cores shared with other work must not fail a correct answer.
vi.setConfig({ testTimeout: 120_000 });

const MM = 1e6;

function regionOf(outer: readonly Point[], islands: readonly (readonly Point[])[] = []): Region {
  return [{ outer: ringOf(outer), holes: islands.map((island) => [...ringOf(island)].reverse()) }];
}

function points(pairs: readonly (readonly [number, number])[]): Point[] {
  return pairs.map(([x, y]) => ({ x: Math.round(x * MM), y: Math.round(y * MM) }));
}

/** A quarter fillet in the inner corner (x, y), clockwise; its middle lies from the corner in the direction `from`. */
function fillet(x: number, y: number, r: number, from: number): [number, number][] {
  if (r === 0) return [[x, y]];
  const steps = 200;
  const middle = { x: x + r * Math.SQRT2 * Math.cos(from), y: y + r * Math.SQRT2 * Math.sin(from) };
  return Array.from({ length: steps + 1 }, (_, k) => {
    const angle = from + Math.PI + Math.PI / 4 - (k / steps) * (Math.PI / 2);
    return [middle.x + r * Math.cos(angle), middle.y + r * Math.sin(angle)];
  });
}

/** An L with legs b (level) and d (upright), 8 mm long, with its inner corner at (d, b) filleted. */
function junctionL(b: number, d: number, r: number): Point[] {
  return points([[0, 0], [8, 0], [8, b], ...fillet(d, b, r, Math.PI / 4), [d, 8], [0, 8]]);
}

/** A T hanging down from a flange b thick, 16 mm long, with a stem d wide. */
function junctionT(b: number, d: number, r: number): Point[] {
  const left = fillet(-d / 2, -b, r, (5 * Math.PI) / 4);
  const right = fillet(d / 2, -b, r, (7 * Math.PI) / 4);
  return points([[-8, 0], [-8, -b], ...left, [-d / 2, -8], [d / 2, -8], ...right, [8, -b], [8, 0]]);
}

const junctions = [
  { b: 1, d: 1, r: 0 },
  { b: 1, d: 0.6, r: 0 },
  { b: 1, d: 1, r: 0.5 },
  { b: 1, d: 0.8, r: 0.3 },
  { b: 1, d: 1, r: 1 },
];

describe.each(junctions)('junctions of legs $b and $d with fillet $r', ({ b, d, r }) => {
  test('L', () => {
    const diameter = 2 * (d + b + 3 * r - Math.sqrt(2 * (2 * r + b) * (2 * r + d)));
    expect(Math.abs((2 * inscribedCircle(regionOf(junctionL(b, d, r))).radius) / MM - diameter)).toBeLessThan(2e-5);
    if (r === 0 && b === d) expect(diameter).toBeCloseTo(1.171573, 6);
  });

  test('T', () => {
    const diameter = ((b + r) ** 2 + r * d + d ** 2 / 4) / (2 * r + b);
    expect(Math.abs((2 * inscribedCircle(regionOf(junctionT(b, d, r))).radius) / MM - diameter)).toBeLessThan(2e-5);
    if (r === 0 && b === d) expect(diameter).toBe(1.25);
  });
});

test('triangles: twice the area over the outline', () => {
  const random = randomNumbers(77);
  for (let i = 0; i < 50; i++) {
    const corners = Array.from({ length: 3 }, () => ({ x: random.whole(-9e6, 9e6), y: random.whole(-9e6, 9e6) }));
    const outline = corners.reduce(
      (sum, p, k) => sum + Math.hypot(corners[(k + 1) % 3].x - p.x, corners[(k + 1) % 3].y - p.y),
      0,
    );
    const { centre, radius } = inscribedCircle(regionOf(corners));
    expect(Math.abs(radius - (2 * Math.abs(signedArea(corners))) / outline)).toBeLessThan(2);
    expect(jstsProbe(jstsPolygon(corners)).distanceToOutline(centre)).toBeCloseTo(radius, 0);
  }
});

test.each([3, 4, 5, 6, 12, 97])('regular polygon of %i sides: its apothem', (sides) => {
  const corners = Array.from({ length: sides }, (_, i) => ({
    x: Math.round(4 * MM * Math.cos((2 * Math.PI * i) / sides)),
    y: Math.round(4 * MM * Math.sin((2 * Math.PI * i) / sides)),
  }));
  expect(Math.abs(inscribedCircle(regionOf(corners)).radius - 4 * MM * Math.cos(Math.PI / sides))).toBeLessThan(3);
});

test('a square frame: the largest circle sits in a corner, sqrt(2) (w - r) = r', () => {
  const frame = regionOf(rectangle(0, 0, 5 * MM, 5 * MM), [rectangle(1.5 * MM, 1.5 * MM, 2 * MM, 2 * MM)]);
  expect(Math.abs(inscribedCircle(frame).radius - 1.5 * MM * (2 - Math.SQRT2))).toBeLessThan(2);
});

test('a slit 10 nm wide and 8 mm long: half its width', () => {
  expect(inscribedCircle(regionOf(rectangle(0, 0, 10, 8 * MM))).radius).toBeCloseTo(5, 0);
});

test('several patches: the roomiest one', () => {
  const two: Region = [...regionOf(rectangle(0, 0, 2 * MM, 2 * MM)), ...regionOf(rectangle(5 * MM, 0, 3 * MM, 9 * MM))];
  expect(inscribedCircle(two).radius).toBeCloseTo(1.5 * MM, -1);
});

test.each(hardCircles)('$name', ({ outline, radius }) => {
  const circle = inscribedCircle(regionOf(outline));
  expect(Math.abs(circle.radius - radius)).toBeLessThan(3);
  expect(jstsProbe(jstsPolygon(outline)).distanceToOutline(circle.centre)).toBeCloseTo(circle.radius, 0);
});

describe('random shapes, against JSTS', () => {
  const shapes = [
    ...Array.from({ length: 40 }, (_, seed) => polygonPair(seed + 700).opening.outer),
    ...Array.from({ length: 20 }, (_, seed) => keywayPair(seed + 700, 60).opening.outer),
  ];

  test.each(shapes.map((outline, i) => ({ i, outline })))('shape $i', ({ outline }) => {
    const ours = inscribedCircle(regionOf(outline), 20);
    const probe = jstsProbe(jstsPolygon(outline));
    expect(probe.contains(ours.centre)).toBe(true);
    expect(probe.distanceToOutline(ours.centre)).toBeGreaterThan(ours.radius - 1);
    const theirs = jstsInscribedCircle(jstsPolygon(outline), 200).radius;
    expect(ours.radius).toBeGreaterThan(theirs - 21);
    expect(ours.radius).toBeLessThan(theirs + 201);
  });
});
