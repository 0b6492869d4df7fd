import { describe, expect, test } from 'vitest';
import { connectCorners } from '../../../src/fit/connect-corners.ts';
import { pointOf, type RationalPoint } from '../../../src/fit/contain-exactly.ts';
import { decideContact } from '../../../src/fit/decide-contact.ts';
import { innerFitRegion } from '../../../src/fit/inner-fit-region.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { subtractWindows } from '../../../src/fit/subtract-windows.ts';
import { boxOf, type Point } from '../../../src/geom/point.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

function cornersOf(opening: Ring, blank: Ring): RationalPoint[] {
  const [o, b] = [prepareOpening(opening), prepareBlank(blank)];
  return decideContact(o, b, subtractWindows(o.grown(), b));
}

const sorted = (points: readonly Point[]) => [...points].sort((p, q) => p.x - q.x || p.y - q.y);
const placesOf = (opening: Ring, blank: Ring) => sorted(cornersOf(opening, blank).map(pointOf));

/** Chambers 2 mm square, one every 4 mm, with necks 1 mm high between. */
function chambers(count: number): Ring {
  const under = Array.from({ length: count }, (_, i): [number, number][] => [
    [4 * i, i === 0 ? 0 : 0.5],
    [4 * i, 0],
    [4 * i + 2, 0],
    [4 * i + 2, 0.5],
  ]).flat();
  const bottom = under.slice(1, -1);
  const top = bottom.map(([x, y]): [number, number] => [x, 2 - y]).reverse();
  return ringOfMm([...bottom, ...top]);
}

describe('contact on both sides', () => {
  test('a blank equal to its opening: one point', () => {
    const shape = ringOfMm([
      [0, 0],
      [2, 0],
      [2, 3],
      [1.4, 3],
      [1.4, 4],
      [2, 4],
      [2, 8],
      [0, 8],
    ]);
    expect(placesOf(shape, shape)).toEqual([{ x: 0, y: 0 }]);
  });

  test('as wide as its slot: the ends of a segment', () => {
    expect(placesOf(boxOfMm(2, 8.5), boxOfMm(2, 8.4))).toEqual([
      { x: 0, y: 0 },
      { x: 0, y: 100_000 },
    ]);
  });

  test('one nanometre short: none', () => {
    expect(placesOf(boxOfMm(1.999999, 8.5), boxOfMm(2, 8.4))).toEqual([]);
  });

  test('one nanometre short on a slant', () => {
    const slot = (width: number) =>
      ringOfMm([
        [0, 0],
        [width, 0],
        [width + 6, 8],
        [6, 8],
      ]);
    const rhomboid = ringOfMm([
      [0, 0],
      [2, 0],
      [5, 4],
      [3, 4],
    ]);
    expect(placesOf(slot(2), rhomboid)).toEqual([
      { x: 0, y: 0 },
      { x: 3_000_000, y: 4_000_000 },
    ]);
    expect(placesOf(slot(1.999999), rhomboid)).toEqual([]);
  });

  test('between nanometres: corners with thirds are found exactly', () => {
    // Two walls that rise 1 in 3, as far apart as the diamond is high; it stops at the end walls with x = 1 and 5.
    const slot = ringOfMm([
      [0, 0],
      [6, 2],
      [6, 5],
      [0, 3],
    ]);
    const diamond = ringOfMm([
      [0, 0],
      [1, 1.5],
      [0, 3],
      [-1, 1.5],
    ]);
    // Far out in opposite corners of the accepted square, doubles alone could not tell.
    const far = (ring: Ring, by: number) => soundRing(ring.map(({ x, y }) => ({ x: x + by, y: y + by })));
    for (const by of [0, 39e6]) {
      const corners = cornersOf(far(slot, by), far(diamond, -by)).sort((a, b) => pointOf(a).x - pointOf(b).x);
      for (const [corner, x] of [
        [corners[0], 1_000_000n],
        [corners[corners.length - 1], 5_000_000n],
      ] as const) {
        expect(corner.x).toBe((x + BigInt(2 * by)) * corner.d);
        expect(3n * corner.y).toBe((x + 6n * BigInt(by)) * corner.d);
      }
    }
    const wider = soundRing(diamond.map(({ x, y }) => ({ x, y: y === 3e6 ? y + 1 : y })));
    expect(placesOf(slot, wider)).toEqual([]);
  });

  test('two equal chambers: two points that are not joined', () => {
    expect(placesOf(chambers(2), boxOfMm(2, 2)).map((p) => p.x)).toEqual([0, 4e6]);
  });
});

describe('corners of one contact', () => {
  const groupsOf = (opening: Ring, blank: Ring) =>
    connectCorners(prepareOpening(opening), prepareBlank(blank), cornersOf(opening, blank));

  test('the ends of a segment belong together', () => {
    expect(groupsOf(boxOfMm(2, 8.5), boxOfMm(2, 8.4)).map((group) => group.length)).toEqual([2]);
  });

  test('three chambers in a row stay apart, though the middle of the outer two is a placement', () => {
    expect(groupsOf(chambers(3), boxOfMm(2, 2)).map((group) => group.length)).toEqual([1, 1, 1]);
  });

  test('the longest comes first', () => {
    const opening = ringOfMm([
      [0, 0],
      [2, 0],
      [2, 0.5],
      [4, 0.5],
      [4, 0],
      [6, 0],
      [6, 3],
      [4, 3],
      [4, 1.5],
      [2, 1.5],
      [2, 2],
      [0, 2],
    ]);
    const groups = groupsOf(opening, boxOfMm(2, 2)).map((group) => boxOf(group.map(pointOf)));
    expect(groups).toEqual([
      { minX: 4e6, minY: 0, maxX: 4e6, maxY: 1e6 },
      { minX: 0, minY: 0, maxX: 0, maxY: 0 },
    ]);
  });
});

describe('the inner-fit region', () => {
  const regionOf = (opening: Ring, blank: Ring) => innerFitRegion(prepareOpening(opening), prepareBlank(blank));

  test('with area: cells and no contacts', () => {
    const region = regionOf(boxOfMm(2.1, 8.5), boxOfMm(2, 8.4));
    expect(region.cells.length).toBeGreaterThan(0);
    expect(region.contacts).toEqual([]);
    expect(region.window).toEqual([0, 0, 100_000, 0, 100_000, 100_000, 0, 100_000]);
  });

  test('without area: contacts and no cells', () => {
    const region = regionOf(boxOfMm(2, 8.4), boxOfMm(2, 8.4));
    expect(region.cells).toEqual([]);
    expect(region.contacts).toEqual([{ x: 0, y: 0 }]);
  });

  test('blocked: neither, and no window where the blank is larger all round', () => {
    expect(regionOf(boxOfMm(2, 8.4), boxOfMm(2.1, 8.5))).toEqual({ cells: [], contacts: [], window: null });
  });
});
