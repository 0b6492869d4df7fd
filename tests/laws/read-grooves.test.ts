import { describe, expect, test } from 'vitest';
import type { Point } from '../../src/geom/point.ts';
import { millOutline } from '../../src/profile/mill-outline.ts';
import type { Groove, Milled } from '../../src/profile/profile.ts';
import { readGrooves } from '../../src/profile/read-grooves.ts';
import { type RandomNumbers, randomNumbers } from '../cases/random-numbers.ts';
import { soundRing } from '../kit/shapes.ts';

const UM = 1_000;

/** A blade with up to five grooves and steps, in whole micrometres; sizes from `least` (um) on. */
function randomBlade(random: RandomNumbers, least: { width: number; depth: number }): Milled {
  const um = (from: number, to: number) => random.whole(from, to) * UM;
  const height = um(6000, 9000);
  const grooves = Array.from({ length: random.whole(0, 5) }, (_, i): Groove => {
    const bottom = random.chance(0.2) ? 0 : um(100, 8000);
    return {
      side: random.pick(['left', 'right'] as const),
      bottom,
      width: i === 0 && random.chance(0.2) && bottom > 0 ? height - bottom : um(least.width, 1500),
      depth: um(least.depth, 1200),
      flank: random.chance(0.5) ? 0 : random.between(0, 0.6),
      rootRadius: random.chance(0.5) ? 0 : um(0, 200),
    };
  });
  return { thickness: um(1500, 3000), height, backRadius: random.chance(0.5) ? 0 : um(0, 800), grooves };
}

/** Blades that can be milled and have a land of so much (um) beside every groove. */
function* blades(count: number, least: { width: number; depth: number; land: number }, salt: number) {
  for (let seed = salt, found = 0; found < count; seed++) {
    const random = randomNumbers(seed);
    const milled = randomBlade(random, least);
    const points = millOutline(milled);
    if (!Array.isArray(points) || leastLand(milled) < least.land * UM) continue;
    found++;
    yield { seed, random, milled, points };
  }
}

function leastLand({ grooves, height, backRadius }: Milled): number {
  return Math.min(
    ...(['left', 'right'] as const).flatMap((side) => {
      const sorted = grooves.filter((g) => g.side === side).sort((a, b) => a.bottom - b.bottom);
      const ends = [backRadius, ...sorted.map((g) => g.bottom + g.width)];
      const starts = [...sorted.map((g) => g.bottom), height];
      return starts.map((start, i) => start - ends[i]).filter((_, i) => starts[i] > 0 && ends[i] < height);
    }),
  );
}

const inOrder = (grooves: readonly Groove[]) =>
  [...grooves].sort((a, b) => a.side.localeCompare(b.side) || a.bottom - b.bottom);

/** How far an arc of radius 1 at a root stays from its corner. */
const cornerGap = (flank: number) => 1 / Math.cos((Math.PI / 2 - flank) / 2) - 1;

describe('a milled outline read back', () => {
  test('gives the description it was milled by, wherever it stands, and leaves nothing unexplained', () => {
    for (const { seed, random, milled, points } of blades(60, { width: 100, depth: 50, land: 50 }, 1)) {
      const shift = { x: random.whole(-3e6, 3e6), y: random.whole(-3e6, 3e6) };
      const read = readGrooves(soundRing(points.map((p) => ({ x: p.x + shift.x, y: p.y + shift.y }))));
      if (!read.ok) throw new Error(`${seed}: ${read.what}`);
      expect(read.unexplained, `${seed}`).toEqual([]);
      const off = [
        read.shift.x - shift.x,
        read.shift.y - shift.y,
        read.milled.thickness - milled.thickness,
        read.milled.height - milled.height,
        (read.milled.backRadius - milled.backRadius) * cornerGap(0),
        ...groovesOff(read.milled, milled, seed),
      ];
      expect(Math.max(...off.map(Math.abs)), `${seed}`).toBeLessThan(1 * UM);
    }
  });

  test('has the same grooves where it was traced, each place off by up to 20 um', () => {
    for (const { seed, random, milled, points } of blades(30, { width: 400, depth: 200, land: 200 }, 50_000)) {
      const traced = tracedOutline(points, random);
      const read = readGrooves(soundRing(traced), 25 * UM);
      if (!read.ok) throw new Error(`${seed}: ${read.what}`);
      expect(
        inOrder(read.milled.grooves).map((g) => g.side),
        `${seed}`,
      ).toEqual(inOrder(milled.grooves).map((g) => g.side));
    }
  });
});

function groovesOff(read: Milled, milled: Milled, seed: number): number[] {
  const [found, given] = [inOrder(read.grooves), inOrder(milled.grooves)];
  expect(
    found.map((g) => g.side),
    `${seed}`,
  ).toEqual(given.map((g) => g.side));
  return found.flatMap((g, i) => [
    g.bottom - given[i].bottom,
    g.width - given[i].width,
    g.depth - given[i].depth,
    (Math.tan(g.flank) - Math.tan(given[i].flank)) * given[i].depth,
    (g.rootRadius - given[i].rootRadius) * cornerGap(given[i].flank),
  ]);
}

/** Places about 60 um apart, each moved by up to 14 um along either axis (20 um in all). */
function tracedOutline(points: readonly Point[], random: RandomNumbers): Point[] {
  const dense = points.flatMap((p, i) => {
    const q = points[(i + 1) % points.length];
    const count = Math.max(1, Math.round(Math.hypot(q.x - p.x, q.y - p.y) / (60 * UM)));
    return Array.from({ length: count }, (_, k) => ({
      x: p.x + ((q.x - p.x) * k) / count,
      y: p.y + ((q.y - p.y) * k) / count,
    }));
  });
  const apart = dense.filter((p, i) => {
    const q = dense[(i + 1) % dense.length];
    return Math.hypot(q.x - p.x, q.y - p.y) > 40 * UM;
  });
  return apart.map((p) => ({ x: p.x + random.whole(-14_000, 14_000), y: p.y + random.whole(-14_000, 14_000) }));
}
