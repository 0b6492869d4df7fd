import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Point } from '../../src/geom/point.ts';
import { type Region, regionOf } from '../../src/geom/region.ts';
import { regionArea } from '../../src/geom/region-area.ts';
import type { Ring } from '../../src/geom/ring.ts';
import { overlapMeter } from '../../src/passage/overlap-area.ts';
import { largestArea, moveRegion, share, sharedBy } from '../../src/passage/overlap-regions.ts';
import { bladeOf, roomFor } from '../../src/passage/widest-blank.ts';
import { polygonPair } from '../cases/polygon-pairs.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { randomSection } from '../cases/random-section.ts';
import { growByMitre, sectionOutline } from '../cases/section-outline.ts';
import { findPassage } from '../kit/find-passage.ts';
import { judge } from '../kit/judge.ts';
import { soundRing } from '../kit/shapes.ts';

const UM = 1_000;
const CLEARANCE = 40 * UM;

/** Keyways by name, each round a random blade. */
function keyways(seed: number, count: number): Record<string, Ring> {
  const random = randomNumbers(seed);
  const rings = Array.from({ length: count }, () =>
    soundRing(growByMitre(sectionOutline(randomSection(random, random.whole(2, 5), 'any')), 50 * UM)),
  );
  return Object.fromEntries(rings.map((ring, i) => [`k${i}`, ring]));
}

const seeds = fc.integer({ min: 0, max: 1e6 });
const few = { numRuns: 12, seed: 5 };

test('the blank enters every chosen keyway with the running clearance really, and no others are claimed', () => {
  fc.assert(
    fc.property(seeds, fc.integer({ min: 1, max: 4 }), (seed, count) => {
      const chosen = keyways(seed, count);
      const others = Object.fromEntries(Object.entries(keyways(seed + 1, 2)).map(([id, ring]) => [`o${id}`, ring]));
      const { blank, entries } = findPassage(chosen, CLEARANCE, others);
      if (!blank) return;
      expect(blank.entersAll).toBe(true);
      for (const { id, fit } of entries) {
        const judged = judge({ ...chosen, ...others }[id], blank.ring, CLEARANCE);
        expect(fit.verdict).toBe(judged.verdict);
        if (id in chosen) expect(judged.clearance).toBeGreaterThanOrEqual(CLEARANCE);
      }
    }),
    few,
  );
});

test('another keyway never makes what is shared larger where the others lie', () => {
  fc.assert(
    fc.property(seeds, fc.integer({ min: -200, max: 200 }), (seed, off) => {
      const regions = Object.values(keyways(seed, 3)).map((ring) => regionOf(ring));
      const moves = regions.map((_, i) => ({ x: i * off * UM, y: -i * off * UM }));
      const two = regionArea(sharedBy(regions.slice(0, 2), moves));
      expect(regionArea(sharedBy(regions, moves))).toBeLessThanOrEqual(two);
    }),
    { numRuns: 60, seed: 5 },
  );
});

test('in whatever order keyways are chosen, the answer is the same', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const chosen = keyways(seed, 3);
      const turned = Object.fromEntries(Object.entries(chosen).reverse());
      const [one, other] = [findPassage(chosen, CLEARANCE), findPassage(turned, CLEARANCE)];
      expect(other.members).toEqual(one.members);
      expect(other.blank?.ring).toEqual(one.blank?.ring);
      expect(other.common).toEqual(one.common);
    }),
    { numRuns: 6, seed: 5 },
  );
});

test('a single keyway gives its own erosion', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const [ring] = Object.values(keyways(seed, 1));
      const { blank, sure, members } = findPassage({ only: ring }, CLEARANCE);
      const { blade } = bladeOf(roomFor(regionOf(ring), CLEARANCE));
      expect(blank?.area).toBe(blade && regionArea(regionOf(blade)));
      expect(sure?.kind).toBe('best');
      expect(members[0].loss?.share ?? 0).toBeLessThan(0.01);
    }),
    few,
  );
});

test('the quick measure of the largest shared part agrees with clipping', () => {
  fc.assert(
    fc.property(seeds, fc.integer({ min: -900, max: 900 }), fc.integer({ min: -900, max: 900 }), (seed, dx, dy) => {
      const [a, b] = Object.values(keyways(seed, 2)).map((ring) => regionOf(ring));
      const move = { x: dx * UM, y: dy * UM };
      const clipped = largestArea(share(a, moveRegion(b, move)));
      // Half a nanometre along a boundary of at most 100 mm.
      expect(Math.abs(overlapMeter(a, b)(move) - clipped)).toBeLessThan(1e8);
    }),
    { numRuns: 200, seed: 5 },
  );
});

test('the quick measure holds where walls lie on each other', () => {
  const [ring] = Object.values(keyways(3, 1));
  const region = regionOf(ring);
  const whole = regionArea(region);
  expect(Math.abs(overlapMeter(region, region)({ x: 0, y: 0 }) - whole)).toBeLessThan(1e8);
  const up = { x: 0, y: 300 * UM };
  const clipped = largestArea(share(region, moveRegion(region, up)));
  expect(Math.abs(overlapMeter(region, region)(up) - clipped)).toBeLessThan(1e8);
});

test('odd outlines throw nothing: jagged ones, slivers, circles of many vertices, all at once and far apart', () => {
  const circle = (count: number, radius: number, off: number): Ring =>
    soundRing(
      Array.from({ length: count }, (_, i) => ({
        x: off + radius * Math.cos((2 * Math.PI * i) / count),
        y: radius * Math.sin((2 * Math.PI * i) / count),
      })),
    );
  const sliver = soundRing([
    { x: 0, y: 0 },
    { x: 3e6, y: 9e6 },
    { x: 3e6 + 3_000, y: 9e6 },
  ]);
  const odd: Record<string, Ring>[] = [
    ...Array.from({ length: 12 }, (_, seed) => ({
      jagged: soundRing(polygonPair(seed).opening.outer),
      other: soundRing(polygonPair(seed + 100).opening.outer),
      plain: Object.values(keyways(seed, 1))[0],
    })),
    { circle: circle(2_000, 2e6, 0), small: circle(3, 1e6, 30e6), far: circle(40, 3e6, -40e6) },
    { sliver, circle: circle(40, 2e6, 0) },
    { sliver },
  ];
  for (const [n, family] of odd.entries()) {
    const { blank, none, entries, common } = findPassage(family, CLEARANCE);
    if (blank)
      expect(
        entries.map(({ fit }) => fit.verdict),
        `${n}`,
      ).toEqual(Object.keys(family).map(() => 'enters'));
    else expect(none, `${n}`).not.toBeNull();
    expect(regionArea(common), `${n}`).toBeGreaterThan(0);
  }
});

/** The greatest area of a connected part that a plain climb finds from a place, moving one keyway at a time. */
function climbedByClipping(rooms: readonly Region[], start: readonly Point[]): number {
  const areaOfLargest = (moves: readonly Point[]) => largestArea(sharedBy(rooms, moves));
  let [moves, area] = [start, areaOfLargest(start)];
  for (let step = 160 * UM; step >= 10 * UM; ) {
    const tries = moves.flatMap((_, i) =>
      [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ].map(([x, y]) => moves.map((move, k) => (k === i ? { x: move.x + x * step, y: move.y + y * step } : move))),
    );
    const better = tries.map((at) => ({ at, area: areaOfLargest(at) })).find((place) => place.area > area * (1 + 1e-7));
    if (better) [moves, area] = [better.at, better.area];
    else step /= 2;
  }
  return area;
}

test('restarts from other alignments, climbed with another engine for areas, gain less than one percent', () => {
  const random = randomNumbers(5);
  for (let seed = 0; seed < 10; seed++) {
    const chosen = keyways(seed, 2);
    const { blank, members } = findPassage(chosen, CLEARANCE);
    const rooms = Object.values(chosen).map((ring) => roomFor(regionOf(ring), CLEARANCE));
    for (let restart = 0; restart < 2; restart++) {
      const off = { x: random.whole(-600, 600) * UM, y: random.whole(-1_500, 1_500) * UM };
      const start = members.map(({ move }, i) => (i === 0 ? move : { x: move.x + off.x, y: move.y + off.y }));
      expect(climbedByClipping(rooms, start), `seed ${seed}`).toBeLessThan((blank?.area ?? 0) * 1.01);
    }
  }
});
