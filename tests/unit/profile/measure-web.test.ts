import { describe, expect, test } from 'vitest';
import { makeRing, type Ring } from '../../../src/geom/ring.ts';
import { measureWeb } from '../../../src/profile/measure-web.ts';
import { millOutline } from '../../../src/profile/mill-outline.ts';
import type { Groove } from '../../../src/profile/profile.ts';

const MM = 1e6;

function ringMm(points: [number, number][]): Ring {
  const result = makeRing(points.map(([x, y]) => ({ x: x * MM, y: y * MM })));
  if (!result.ok) throw new Error(result.fault.message);
  return result.ring;
}

function milledRing(grooves: Groove[], backRadius = 0): Ring {
  const points = millOutline({ thickness: 2 * MM, height: 8 * MM, backRadius, grooves });
  if (!Array.isArray(points)) throw new Error(points.message);
  const result = makeRing(points);
  if (!result.ok) throw new Error(result.fault.message);
  return result.ring;
}

const groove = (side: Groove['side'], bottom: number, depth: number, flank = 0): Groove => ({
  side,
  bottom: bottom * MM,
  width: MM,
  depth: depth * MM,
  flank,
  rootRadius: 0,
});

const inMm = (ring: Ring) => {
  const { thickness, from, to } = measureWeb(ring);
  return { thickness: thickness / MM, from: from / MM, to: to / MM };
};

describe('the web of a section', () => {
  test('a plain blade has its thickness as web', () => {
    expect(inMm(milledRing([]))).toEqual({ thickness: 2, from: 0, to: 8 });
  });

  test('a groove leaves the thickness less its depth, over its width', () => {
    expect(inMm(milledRing([groove('left', 3, 0.6)]))).toEqual({ thickness: 1.4, from: 3, to: 4 });
  });

  test('grooves of both faces count together where they share a height', () => {
    const web = inMm(milledRing([groove('left', 3, 0.6), groove('right', 3.5, 0.7)]));
    expect(web).toEqual({ thickness: 0.7, from: 3.5, to: 4 });
  });

  test('of two bands that are equally thin the lower one is told', () => {
    expect(inMm(milledRing([groove('left', 5, 0.6), groove('right', 2, 0.6)]))).toEqual({
      thickness: 1.4,
      from: 2,
      to: 3,
    });
  });

  test('leaning flanks that share a height are thinnest there', () => {
    // The left groove loses depth from 3.7 to 4, the right one gains it from 3.6 to 3.9: together 0.4 in between.
    const web = inMm(milledRing([groove('left', 3, 0.3, Math.PI / 4), groove('right', 3.6, 0.3, Math.PI / 4)]));
    expect(web).toEqual({ thickness: 1.6, from: 3.7, to: 3.9 });
  });

  test('the rounded back is not a web', () => {
    const web = inMm(milledRing([groove('left', 3, 0.6)], 1));
    expect(web).toEqual({ thickness: 1.4, from: 3, to: 4 });
    expect(inMm(milledRing([], 0.8)).thickness).toBe(2);
  });

  test('a step at the back is a web', () => {
    expect(inMm(milledRing([groove('left', 0, 0.6)]))).toEqual({ thickness: 1.4, from: 0, to: 1 });
  });

  test('an hourglass is thinnest at its waist', () => {
    const web = inMm(
      ringMm([
        [0, 0],
        [4, 0],
        [2.5, 3],
        [4, 6],
        [0, 6],
        [1.5, 3],
      ]),
    );
    expect(web).toEqual({ thickness: 1, from: 3, to: 3 });
  });

  test('a pointed section without a waist has its greatest thickness', () => {
    expect(
      inMm(
        ringMm([
          [0, 0],
          [2, 3],
          [0, 6],
          [-2, 3],
        ]),
      ).thickness,
    ).toBe(4);
    expect(
      inMm(
        ringMm([
          [0, 0],
          [4, 0],
          [2, 3],
        ]),
      ),
    ).toEqual({ thickness: 4, from: 0, to: 0 });
    expect(
      inMm(
        ringMm([
          [0, 3],
          [2, 0],
          [4, 3],
        ]),
      ),
    ).toEqual({ thickness: 4, from: 3, to: 3 });
  });

  test('a height that is crossed twice counts both stretches', () => {
    const fork = ringMm([
      [0, 0],
      [3, 0],
      [3, 4],
      [2, 4],
      [2, 1],
      [1, 1],
      [1, 4],
      [0, 4],
    ]);
    expect(inMm(fork)).toEqual({ thickness: 2, from: 1, to: 4 });
  });
});
