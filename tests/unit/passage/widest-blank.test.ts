import { expect, test } from 'vitest';
import { boxOf } from '../../../src/geom/point.ts';
import { regionOf } from '../../../src/geom/region.ts';
import { regionArea } from '../../../src/geom/region-area.ts';
import { moveRegion } from '../../../src/passage/overlap-regions.ts';
import { bladeOf, roomFor, SLACK } from '../../../src/passage/widest-blank.ts';
import { boxOfMm, ringOfMm } from '../../kit/shapes.ts';

/*
 * Closed forms: a rectangle eroded by a disk is a smaller rectangle.
 */

const MM = 1e6;

test('the room of a slot is the slot less the clearance and the slack all round', () => {
  const c = 40_000;
  const room = roomFor(regionOf(boxOfMm(2, 8)), c);
  const { minX, minY, maxX, maxY } = boxOf(room[0].outer);
  const off = c + SLACK;
  expect([minX, minY, maxX, maxY]).toEqual([off, off, 2 * MM - off, 8 * MM - off]);
  expect(regionArea(room)).toBe((2 * MM - 2 * off) * (8 * MM - 2 * off));
});

test('a slot as narrow as the clearance leaves no room', () => {
  expect(roomFor(regionOf(boxOfMm(0.08, 8)), 40_000)).toEqual([]);
});

test('the largest part is the blade, the others are told from the largest on', () => {
  const at = (width: number, height: number, x: number) =>
    moveRegion(regionOf(boxOfMm(width, height)), { x: x * MM, y: 0 });
  const { blade, apart } = bladeOf([...at(1, 1, 0), ...at(2, 8, 10), ...at(1, 3, 20)]);
  expect(blade && regionArea(regionOf(blade)) / 1e12).toBeCloseTo(16, 3);
  expect(apart.map((region) => Math.round(regionArea(region) / 1e12))).toEqual([3, 1]);
});

test('crumbs are no blade and no part', () => {
  expect(bladeOf(regionOf(boxOfMm(0.09, 0.1)))).toEqual({ blade: null, apart: [] });
  expect(bladeOf([])).toEqual({ blade: null, apart: [] });
});

test('a bridge thinner than a hundredth of a millimetre holds nothing together', () => {
  const lobes = (bridge: number) =>
    ringOfMm([
      [0, 0],
      [2, 0],
      [2, 3],
      [1 + bridge, 3],
      [1 + bridge, 4],
      [2, 4],
      [2, 8],
      [0, 8],
      [0, 4],
      [1, 4],
      [1, 3],
      [0, 3],
    ]);
  expect(bladeOf(regionOf(lobes(0.009))).apart.length).toBe(1);
  expect(bladeOf(regionOf(lobes(0.011))).apart.length).toBe(0);
});

test('a thin fin is cut off and sharp corners stay', () => {
  const finned = ringOfMm([
    [0, 0],
    [2, 0],
    [2, 4],
    [4, 4],
    [4, 4.008],
    [2, 4.008],
    [2, 8],
    [0, 8],
  ]);
  const { blade } = bladeOf(regionOf(finned));
  const { maxX } = boxOf(blade ?? []);
  expect(maxX).toBeLessThan(2.1 * MM);
  expect(blade && Math.abs(regionArea(regionOf(blade)) / 1e12 - 16)).toBeLessThan(0.001);
});
