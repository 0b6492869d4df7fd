import type { Point } from '../../src/geom/point.ts';
import { type FitCase, type KnownFit, plainOpening } from './fit-case.ts';
import { type RandomNumbers, randomNumbers } from './random-numbers.ts';
import { isSimpleOutline } from './simple-outline.ts';

const MM = 1e6;

/**
 * A pair of simple polygons without any likeness to a keyway: stars, combs and crooked corridors against stars,
 * combs, slivers and shrunken copies. Where the blank is the opening itself, shrunk towards a point that sees all
 * of it, it fits by construction.
 */
export function polygonPair(seed: number): FitCase {
  const random = randomNumbers(seed * 7 + 3);
  for (;;) {
    const pair = random.chance(0.35) ? shrunkenCopy(random) : twoPolygons(random);
    if (isSimpleOutline(pair.blank) && isSimpleOutline(pair.opening)) {
      return {
        name: `polygon pair ${seed}`,
        blank: pair.blank,
        opening: plainOpening(pair.opening),
        known: pair.known,
        why: pair.why,
      };
    }
  }
}

interface Drawn {
  readonly opening: Point[];
  readonly blank: Point[];
  readonly known: KnownFit;
  readonly why: string;
}

/** The star's centre sees the whole star, so a copy shrunk towards it stays inside. */
function shrunkenCopy(random: RandomNumbers): Drawn {
  const opening = star(random, random.whole(5, 40), 4 * MM);
  const scale = random.between(0.2, 0.95);
  const by = { x: random.whole(-9, 9) * MM, y: random.whole(-9, 9) * MM };
  const blank = opening.map((p) => ({ x: Math.round(p.x * scale) + by.x, y: Math.round(p.y * scale) + by.y }));
  return { opening, blank, known: { outcome: 'fits' }, why: `a copy of the opening at scale ${scale}` };
}

function twoPolygons(random: RandomNumbers): Drawn {
  const opening = random.pick(OPENINGS)(random);
  const blank = random.pick(BLANKS)(random);
  return { opening, blank, known: {}, why: 'nothing is known' };
}

const OPENINGS: readonly ((random: RandomNumbers) => Point[])[] = [
  (random) => star(random, random.whole(5, 60), random.between(3, 6) * MM),
  (random) => comb(random, random.whole(2, 8), random.between(4, 8) * MM),
  (random) => corridor(random, random.whole(3, 9), random.between(0.8, 2) * MM),
];

const BLANKS: readonly ((random: RandomNumbers) => Point[])[] = [
  (random) => star(random, random.whole(3, 30), random.between(0.3, 2.5) * MM),
  (random) => comb(random, random.whole(2, 5), random.between(0.8, 4) * MM),
  (random) => corridor(random, random.whole(2, 6), random.between(0.2, 0.8) * MM),
  (random) => [
    { x: 0, y: 0 },
    { x: random.whole(1, 4e6), y: random.whole(1, 4e6) },
    { x: random.whole(-2e6, 0), y: random.whole(1, 4e6) },
  ],
];

/** Vertices at rising angles and random distances from the origin, which sees all of them. */
function star(random: RandomNumbers, count: number, radius: number): Point[] {
  const spiky = random.between(0.3, 0.95);
  return Array.from({ length: count }, (_, i) => {
    const angle = ((i + random.between(-0.3, 0.3)) * 2 * Math.PI) / count;
    const distance = radius * random.between(spiky, 1);
    return { x: Math.round(distance * Math.cos(angle)), y: Math.round(distance * Math.sin(angle)) };
  });
}

/** A bar with crooked teeth, some of them wider at the tip than at the foot. */
function comb(random: RandomNumbers, teeth: number, length: number): Point[] {
  const pitch = length / teeth;
  const bar = length * random.between(0.1, 0.3);
  const upper: Point[] = [];
  for (let i = teeth - 1; i >= 0; i--) {
    const height = bar + length * random.between(0.1, 0.5);
    const [left, right] = [pitch * (i + random.between(0.2, 0.35)), pitch * (i + random.between(0.65, 0.8))];
    const flare = pitch * random.between(-0.1, 0.15);
    upper.push(whole(right, bar), whole(right + flare, height), whole(left - flare, height), whole(left, bar));
  }
  return [whole(0, 0), whole(length, 0), whole(length, bar), ...upper, whole(0, bar)];
}

/** A path of given width round random bends: one side out, the other side back. */
function corridor(random: RandomNumbers, bends: number, width: number): Point[] {
  const far: Point[] = [];
  const near: Point[] = [];
  let at = { x: 0, y: 0 };
  for (let i = 0; i <= bends; i++) {
    const reach = (width / 2) * random.between(0.8, 1.2);
    far.push(whole(at.x + random.between(-0.2, 0.2) * width, at.y + reach));
    near.push(whole(at.x + random.between(-0.2, 0.2) * width, at.y - reach));
    at = { x: at.x + width * random.between(0.8, 1.6), y: at.y + width * random.between(-1, 1) };
  }
  return [...near, ...far.reverse()];
}

function whole(x: number, y: number): Point {
  return { x: Math.round(x), y: Math.round(y) };
}
