import { boxOf, type Point } from '../geom/point.ts';

/** A translation with rational coordinates x / d and y / d, d > 0, in nanometres. */
export interface RationalPoint {
  readonly x: bigint;
  readonly y: bigint;
  readonly d: bigint;
}

/** A point with both coordinates multiplied by a common scale. */
interface BigPoint {
  readonly x: bigint;
  readonly y: bigint;
}

/** Fraction bits that {@link rationalOf} keeps: a double nanometre of this size has no more that matter. */
const FRACTION = 2 ** 20;

/** A translation of doubles as a rational one, rounded to 2^-20 nm. */
export function rationalOf(t: Point): RationalPoint {
  return { x: BigInt(Math.round(t.x * FRACTION)), y: BigInt(Math.round(t.y * FRACTION)), d: BigInt(FRACTION) };
}

/** The nearest doubles to a rational translation. */
export function pointOf(t: RationalPoint): Point {
  return { x: ratio(t.x, t.d), y: ratio(t.y, t.d) };
}

function ratio(n: bigint, d: bigint): number {
  const whole = n / d;
  return Number(whole) + Number(n - whole * d) / Number(d);
}

/** {@link containsExactly} for every part of a blank. */
export function containsBlank(
  boundaries: readonly (readonly Point[])[],
  parts: readonly (readonly Point[])[],
  t: RationalPoint,
): boolean {
  return parts.every((part) => containsExactly(boundaries, part, t));
}

/**
 * Whether the blank moved by t lies within the opening, both as closed sets: touching is allowed. Exact.
 *
 * It does not use the window subtraction at all, so it can check it: no blank edge may cross an opening edge;
 * every blank edge, cut where an opening vertex lies on it, must have the middle of each part inside or on the
 * opening; and no island of the opening may lie inside the blank.
 *
 * @param boundaries of the opening, whole nanometres, inside to the left.
 * @param blank whole nanometres, counter-clockwise.
 * @check tests/unit/fit/contain-exactly.test.ts
 */
export function containsExactly(
  boundaries: readonly (readonly Point[])[],
  blank: readonly Point[],
  t: RationalPoint,
): boolean {
  const scale = 2n * t.d;
  const shift = { x: 2n * t.x, y: 2n * t.y };
  const moved = blank.map((p) => ({ x: BigInt(p.x) * scale + shift.x, y: BigInt(p.y) * scale + shift.y }));
  const scene = new ScaledOpening(boundaries, scale);
  const near = pointOf(t);
  for (let i = 0; i < blank.length; i++) {
    const next = (i + 1) % blank.length;
    const box = boxOf([blank[i], blank[next]]);
    const reach = {
      minX: box.minX + near.x - 1,
      maxX: box.maxX + near.x + 1,
      minY: box.minY + near.y - 1,
      maxY: box.maxY + near.y + 1,
    };
    if (!scene.holdsEdge(moved[i], moved[next], reach)) return false;
  }
  return boundaries.every((ring) => !isIsland(ring) || !islandInside(ring, blank, near));
}

interface Reach {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** An opening edge with its ends multiplied by the scale, and its box in nanometres for quick skipping. */
interface ScaledEdge {
  readonly a: BigPoint;
  readonly b: BigPoint;
  readonly box: Reach;
}

class ScaledOpening {
  private readonly edges: ScaledEdge[];

  constructor(boundaries: readonly (readonly Point[])[], scale: bigint) {
    this.edges = boundaries.flatMap((ring) =>
      ring.map((p, i) => {
        const q = ring[(i + 1) % ring.length];
        return { a: scaled(p, scale), b: scaled(q, scale), box: boxOf([p, q]) };
      }),
    );
  }

  /** Whether the closed segment p-q lies within the opening. */
  holdsEdge(p: BigPoint, q: BigPoint, reach: Reach): boolean {
    const stops: BigPoint[] = [];
    for (const { a, b, box } of this.edges) {
      if (box.minX > reach.maxX || box.maxX < reach.minX || box.minY > reach.maxY || box.maxY < reach.minY) continue;
      const pqa = cross(p, q, a);
      const pqb = cross(p, q, b);
      if (pqa === 0n && isWithin(p, q, a)) stops.push(a);
      if ((pqa > 0n && pqb > 0n) || (pqa < 0n && pqb < 0n) || pqa === 0n || pqb === 0n) continue;
      const abp = cross(a, b, p);
      const abq = cross(a, b, q);
      if ((abp > 0n && abq < 0n) || (abp < 0n && abq > 0n)) return false;
    }
    const along = (r: BigPoint) => (r.x - p.x) * (q.x - p.x) + (r.y - p.y) * (q.y - p.y);
    stops.sort((r, s) => (along(r) < along(s) ? -1 : 1));
    const chain = [p, ...stops, q];
    return chain.every((r, i) => i === 0 || this.holdsPoint(middle(chain[i - 1], r), reach));
  }

  /** Whether a point lies inside or on the boundary. */
  private holdsPoint(p: BigPoint, reach: Reach): boolean {
    let inside = false;
    for (const { a, b, box } of this.edges) {
      if (box.maxY < reach.minY || box.minY > reach.maxY || box.maxX < reach.minX) continue;
      const side = cross(a, b, p);
      if (side === 0n && isWithin(a, b, p)) return true;
      if (a.y > p.y !== b.y > p.y && side > 0n === b.y > a.y) inside = !inside;
    }
    return inside;
  }
}

function scaled(p: Point, scale: bigint): BigPoint {
  return { x: BigInt(p.x) * scale, y: BigInt(p.y) * scale };
}

/** The middle of two points; both are multiples of two unless they are themselves crossings, which never happens here. */
function middle(p: BigPoint, q: BigPoint): BigPoint {
  return { x: (p.x + q.x) / 2n, y: (p.y + q.y) / 2n };
}

function cross(a: BigPoint, b: BigPoint, c: BigPoint): bigint {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** For a point in line with a-b: whether it lies on the closed segment. */
function isWithin(a: BigPoint, b: BigPoint, p: BigPoint): boolean {
  const [x0, x1] = a.x < b.x ? [a.x, b.x] : [b.x, a.x];
  const [y0, y1] = a.y < b.y ? [a.y, b.y] : [b.y, a.y];
  return x0 <= p.x && p.x <= x1 && y0 <= p.y && p.y <= y1;
}

/** Holes run clockwise. */
function isIsland(ring: readonly Point[]): boolean {
  let twice = 0;
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length];
    twice += (p.x - ring[0].x) * (q.y - ring[0].y) - (q.x - ring[0].x) * (p.y - ring[0].y);
  });
  return twice < 0;
}

/** Whether an island that no blank edge enters lies inside the moved blank: one inner point of it tells. */
function islandInside(ring: readonly Point[], blank: readonly Point[], t: Point): boolean {
  const p = pointInside(ring);
  let inside = false;
  for (let i = 0, j = blank.length - 1; i < blank.length; j = i++) {
    const [ax, ay, bx, by] = [blank[j].x + t.x, blank[j].y + t.y, blank[i].x + t.x, blank[i].y + t.y];
    if (ay > p.y !== by > p.y && p.x < ax + ((p.y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  }
  return inside;
}

/** A point inside a simple polygon: on a level between two vertices, the middle of the widest inner stretch. */
function pointInside(ring: readonly Point[]): Point {
  const levels = [...new Set(ring.map((p) => p.y))].sort((a, b) => a - b);
  const gaps = levels.slice(1).map((y, i) => ({ size: y - levels[i], y: (y + levels[i]) / 2 }));
  const y = gaps.reduce((best, gap) => (gap.size > best.size ? gap : best)).y;
  const xs: number[] = [];
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length];
    if (a.y > y !== b.y > y) xs.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x));
  });
  xs.sort((a, b) => a - b);
  let best = { size: -1, x: xs[0] };
  for (let i = 0; i + 1 < xs.length; i += 2)
    if (xs[i + 1] - xs[i] > best.size) best = { size: xs[i + 1] - xs[i], x: (xs[i] + xs[i + 1]) / 2 };
  return { x: best.x, y };
}
