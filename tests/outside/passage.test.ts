import { expect, test } from 'vitest';
import { regionOf } from '../../src/geom/region.ts';
import { regionArea } from '../../src/geom/region-area.ts';
import type { Ring } from '../../src/geom/ring.ts';
import { roomFor } from '../../src/passage/widest-blank.ts';
import { wardFamily } from '../cases/ward-families.ts';
import { jstsDifference, jstsPolygon, jstsShrunken } from '../kit/engines/jsts-shapes.ts';
import { findPassage } from '../kit/find-passage.ts';
import { boxOfMm, ringOfMm, soundRing } from '../kit/shapes.ts';

/*
 * Closed forms of plane geometry: the intersection of rectangles, a rectangle or a disk eroded by a disk, a disk in a strip.
 * And JSTS (a translation of the JTS Topology Suite) as another engine for intersections and erosions.
 */

const MM2 = 1e12;
const UM = 1_000;

/** What a blank of this outline may be short of the widest one, all round: the rule of the search, nanometres. */
const SHORT = 600;

const moved = (ring: Ring, dx: number, dy: number): Ring => soundRing(ring.map((p) => ({ x: p.x + dx, y: p.y + dy })));

test('two slots that are drawn apart share a rectangle of the lesser width and height', () => {
  const passage = findPassage({ wide: moved(boxOfMm(3, 7), 5e6, -2e6), tall: boxOfMm(2, 9) }, 50 * UM);
  expect(passage.area / MM2).toBeCloseTo(2 * 7, 3);
  expect(passage.sure?.kind).toBe('agreed');
  expect(passage.blank?.width).toBeGreaterThan(1.9e6 - 2 * SHORT);
  expect(passage.blank?.width).toBeLessThan(1.9e6);
  expect(passage.blank?.height).toBeGreaterThan(6.9e6 - 2 * SHORT);
  expect(passage.blank?.height).toBeLessThan(6.9e6);
  expect(passage.blank?.web.thickness).toBe(passage.blank?.width);
});

test('walls that lie on each other in pairs are moved in pairs: four slots share the whole slot', () => {
  const slot = boxOfMm(2, 8);
  const passage = findPassage({ a: slot, b: slot, c: moved(slot, 1e6, 0), d: moved(slot, 1e6, 0) }, 40 * UM);
  expect(passage.area / MM2).toBeCloseTo(16, 3);
  expect(passage.sure?.kind).toBe('best');
});

/** A regular polygon of so many sides round a circle of radius 1 mm. */
function roundedBy(sides: number, radius: number): Ring {
  return soundRing(
    Array.from({ length: sides }, (_, i) => {
      const angle = (2 * Math.PI * (i + 0.5)) / sides;
      const corner = radius / Math.cos(Math.PI / sides);
      return { x: Math.round(corner * Math.cos(angle)), y: Math.round(corner * Math.sin(angle)) };
    }),
  );
}

test('a disk and a strip share the disk cut by two chords, and the blank is that of the disk and strip eroded', () => {
  const [R, h, c] = [3e6, 1.6e6, 60 * UM];
  const shared = (radius: number, half: number) =>
    2 * (half * Math.sqrt(radius ** 2 - half ** 2) + radius ** 2 * Math.asin(half / radius));
  const passage = findPassage({ disk: roundedBy(240, R), strip: moved(boxOfMm(3.2, 12), 4e6, 1e6) }, c);
  expect(passage.area / shared(R, h)).toBeCloseTo(1, 3);
  expect((passage.blank?.area ?? 0) / shared(R - c, h - c)).toBeCloseTo(1, 3);
});

test('erosion agrees with another engine to the rule, and so does what all keyways of a family share', () => {
  const { openings } = wardFamily(11, 6, 60);
  const rings = openings.map((points) => soundRing(points));
  for (const ring of rings) {
    const other = jstsShrunken(jstsPolygon(ring), 40 * UM).getArea();
    const perimeter = ring.reduce((sum, p, i) => {
      const q = ring[(i + 1) % ring.length];
      return sum + Math.hypot(q.x - p.x, q.y - p.y);
    }, 0);
    const own = regionArea(roomFor(regionOf(ring), 40 * UM));
    expect(own).toBeLessThanOrEqual(other + 1e6);
    expect(own).toBeGreaterThan(other - perimeter * SHORT);
  }
  const passage = findPassage(Object.fromEntries(rings.map((ring, i) => [`k${i}`, ring])), 20 * UM);
  const placed = passage.members.map(({ id, move }) => jstsPolygon(moved(rings[Number(id.slice(1))], move.x, move.y)));
  // a and b is a less what of it is not in b.
  const both = placed.reduce((a, b) => jstsDifference(a, jstsDifference(a, b)));
  expect(passage.area / both.getArea()).toBeCloseTo(1, 6);
  const widest = jstsShrunken(both, 20 * UM).getArea();
  expect((passage.blank?.area ?? 0) / widest).toBeCloseTo(1, 2);
  expect(passage.blank?.area).toBeLessThan(widest * 1.0001);
});

test('a keyway too narrow for the clearance is named, and what all share is shown nevertheless', () => {
  const passage = findPassage({ slit: boxOfMm(0.09, 8), wide: boxOfMm(2, 8) }, 50 * UM);
  expect(passage.none).toEqual({ why: 'too-narrow', ids: ['slit'] });
  expect(passage.area / MM2).toBeCloseTo(0.72, 3);
});

/** A slot 2 mm wide and 8 mm high with a ward 1 mm high standing in from one side. */
function notched(from: number, depth: number, left: boolean): Ring {
  const x = (inwards: number) => (left ? inwards : 2 - inwards);
  const corners: [number, number][] = [
    [x(0), 0],
    [x(2), 0],
    [x(2), 8],
    [x(0), 8],
    [x(0), from + 1],
    [x(depth), from + 1],
    [x(depth), from],
    [x(0), from],
  ];
  return ringOfMm(corners);
}

/*
 * Rectangles: both wards level, what is shared falls into parts of 2 x 4 and 2 x 3 mm. One keyway lowered by the height of a
 * ward leaves a path that bends round both: 2 x 7 less two wards of 1.2 x 1 and a little for the clearance.
 */
test('keyways are moved until what they share hangs together, where that leaves a wider blade', () => {
  for (const copies of [1, 2]) {
    const pairs = Array.from({ length: copies }, (_, i) => ({
      [`a${i}`]: notched(3, 1.2, true),
      [`b${i}`]: notched(3, 1.2, false),
    }));
    const { blank } = findPassage(Object.assign({}, ...pairs), 30 * UM);
    expect(blank?.apart.length).toBe(0);
    expect(blank?.entersAll).toBe(true);
    const [path, c] = [2 * 7 - 2 * 1.2, 0.03];
    expect((blank?.area ?? 0) / MM2).toBeLessThan(path);
    // Lowered by twice the clearance more, and eroded by it along 2 x (2 + 7) mm of wall and four flanks of 1.2 mm.
    expect((blank?.area ?? 0) / MM2).toBeGreaterThan(path - 2 * c * 2 - c * (18 + 4 * 1.2) - 0.03);
  }
});

test('an L and its mirror image share the whole upright, which none of the plain starts leads to', () => {
  const foot: [number, number][] = [
    [0, 0],
    [4, 0],
    [4, 1],
    [1, 1],
    [1, 8],
    [0, 8],
  ];
  const mirrored = foot.map(([x, y]): [number, number] => [4 - x, y]).reverse();
  const { blank, sure } = findPassage({ a: ringOfMm(foot), b: ringOfMm(mirrored) }, 20 * UM);
  expect((blank?.area ?? 0) / MM2).toBeGreaterThan(0.96 * 7.96 - 0.02);
  expect(sure?.kind).toBe('one-of-several');
});

test('that there is no better one is not said where the smaller keyway loses one and a half percent', () => {
  const { sure } = findPassage({ short: boxOfMm(2, 8), narrow: boxOfMm(1.97, 10) }, 20 * UM);
  expect(sure?.kind).toBe('agreed');
});

test('starts that end at areas five percent apart do not agree', () => {
  // The feet share 4 x 1.9 mm where they are level, the uprights 1 x 8 mm where those are.
  const foot: [number, number][] = [
    [0, 0],
    [4, 0],
    [4, 1.9],
    [1, 1.9],
    [1, 8],
    [0, 8],
  ];
  const mirrored = foot.map(([x, y]): [number, number] => [4 - x, y]).reverse();
  const { sure } = findPassage({ a: ringOfMm(foot), b: ringOfMm(mirrored) }, 20 * UM);
  expect(sure?.kind).toBe('one-of-several');
});

test('a room that falls into parts by itself: the largest is the blade, the other is told', () => {
  const neck = ringOfMm([
    [0, 0],
    [3, 0],
    [3, 3],
    [1.51, 3.2],
    [1.51, 4.8],
    [3, 5],
    [3, 9],
    [0, 9],
    [0, 5],
    [1.49, 4.8],
    [1.49, 3.2],
    [0, 3],
  ]);
  const { blank, sure } = findPassage({ neck, wide: boxOfMm(4, 10) }, 30 * UM);
  expect(blank?.apart.length).toBe(1);
  expect(blank?.entersAll).toBe(true);
  expect(blank?.height).toBeGreaterThan(3.9e6);
  // The bound is the room of the larger lobe, not of both.
  expect(sure?.kind).toBe('best');
  expect(sure?.atMost).toBeLessThan(3 * 4.2 * MM2);
});
