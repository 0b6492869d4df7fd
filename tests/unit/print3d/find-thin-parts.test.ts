import { expect, test } from 'vitest';
import { regionOf } from '../../../src/geom/region.ts';
import { regionArea } from '../../../src/geom/region-area.ts';
import { makeRing, type Ring } from '../../../src/geom/ring.ts';
import { findThinParts, regionRound } from '../../../src/print3d/find-thin-parts.ts';

function ringOf(points: readonly (readonly [number, number])[]): Ring {
  const made = makeRing(points.map(([x, y]) => ({ x: x * 1e6, y: y * 1e6 })));
  if (!made.ok) throw new Error('not a ring');
  return made.ring;
}

/** A rectangle of 4 x 8 mm with a fin of 0.2 x 1 mm to the right at a height of 3 mm. */
const FINNED = ringOf([
  [0, 0],
  [4, 0],
  [4, 3],
  [5, 3],
  [5, 3.2],
  [4, 3.2],
  [4, 8],
  [0, 8],
]);

test('a fin thinner than the width is found with its place and its thickness', () => {
  const [part, ...others] = findThinParts(regionOf(FINNED), 0.3e6);
  expect(others).toEqual([]);
  // The greatest circle in it lies at its root and reaches into the fillet that the disc leaves, so it is a little wider.
  expect(part.width / 1e6).toBeGreaterThan(0.199);
  expect(part.width / 1e6).toBeLessThan(0.25);
  expect(part.box.maxX).toBe(5e6);
  expect((part.box.minY + part.box.maxY) / 2e6).toBeCloseTo(3.1, 3);
});

test('the same fin is there for a finer nozzle, and square corners are no features', () => {
  expect(findThinParts(regionOf(FINNED), 0.19e6)).toEqual([]);
  expect(
    findThinParts(
      regionOf(
        ringOf([
          [0, 0],
          [4, 0],
          [4, 8],
          [0, 8],
        ]),
      ),
      0.4e6,
    ),
  ).toEqual([]);
});

test('a wedge loses its tip only where it is sharper than 60 degrees', () => {
  const wedge = (half: number) =>
    ringOf([
      [-half, 0],
      [half, 0],
      [0, 3],
    ]);
  const wide = 3 * Math.tan((35 * Math.PI) / 180);
  const sharp = 3 * Math.tan((10 * Math.PI) / 180);
  expect(findThinParts(regionOf(wedge(wide)), 0.1e6).filter(({ box }) => box.maxY > 2.5e6)).toEqual([]);
  const [tip] = findThinParts(regionOf(wedge(sharp)), 0.1e6).filter(({ box }) => box.maxY > 2.5e6);
  expect(tip.box.maxY).toBe(3e6);
});

test('what is thinner everywhere is lost whole', () => {
  const strip = ringOf([
    [0, 0],
    [0.1, 0],
    [0.1, 5],
    [0, 5],
  ]);
  const [part] = findThinParts(regionOf(strip), 0.2e6);
  expect(part.width / 1e6).toBeCloseTo(0.1, 3);
  expect([part.box.minY, part.box.maxY]).toEqual([0, 5e6]);
});

test('the region round an outline is a frame less its inside', () => {
  expect(regionArea(regionRound([FINNED], 1e6)) / 1e12).toBeCloseTo(7 * 10 - 32.2, 6);
});
