import { boxOf, type Point } from '../geom/point.ts';
import type { Ring } from '../geom/ring.ts';

/** The side of a section on which something stands in, seen from the bow or the front of the plug. */
export type IndentSide = 'left' | 'right';

/**
 * A place where a section is narrower on one side than above and below it: in a keyway a ward of the plug, in a blade a
 * groove. In the frame of the outline, nanometres.
 */
export interface Indent {
  readonly side: IndentSide;
  readonly from: number;
  readonly to: number;
  /** How far it stands in from what lies above and below it. */
  readonly depth: number;
  /** Its outline, from the lower end of its foot to the upper one. */
  readonly line: readonly Point[];
}

/** What stands in by less than this is no ward and no groove, nanometres: as in the words of a fit. */
const LEAST_DEPTH = 20_000;

/** A ward's foot is where it stands out by this share of its depth, and by no more than this, nanometres. */
const FOOT = { share: 0.05, most: 2_000 } as const;

/** How far a side stands in at a height; heights rise, and may repeat where it jumps. */
interface SidePoint {
  readonly up: number;
  readonly in: number;
}

/**
 * All places where a section stands in on its left and right, from the back upwards, each side for itself.
 *
 * At each height one free stretch is looked at, so that a ward with an overhang counts as far as it reaches: of several the
 * one that hangs together with those above and below it, in the chain of the greatest area. An
 * indent is a hill of that line that stands at least 0.02 mm above the higher of the two valleys beside it; what lies at an
 * end of the section (a rounded back, a step up to the top) is none, since nothing is wider beyond it. A small hill on the
 * flank of a larger one belongs to that.
 *
 * @check tests/unit/passage/indents.test.ts
 */
export function indentsOf(ring: Ring): Indent[] {
  const slabs = slabsOf(ring);
  const { minX, maxX } = boxOf(ring);
  const left = slabs.flatMap(({ low, high, left: [a, b] }) => [
    { up: low, in: a - minX },
    { up: high, in: b - minX },
  ]);
  const right = slabs.flatMap(({ low, high, right: [a, b] }) => [
    { up: low, in: maxX - a },
    { up: high, in: maxX - b },
  ]);
  return [
    ...hillsOf(left).map((hill) => toIndent('left', hill, (depth) => minX + depth)),
    ...hillsOf(right).map((hill) => toIndent('right', hill, (depth) => maxX - depth)),
  ];
}

/** The section between two neighbouring vertex heights: where its sides lie at the lower and at the upper one, as x. */
export interface Slab {
  readonly low: number;
  readonly high: number;
  readonly left: readonly [number, number];
  readonly right: readonly [number, number];
}

/** The section cut at every vertex height, from the back; of several stretches at a height the one in the chain of the greatest area. */
export function slabsOf(ring: Ring): Slab[] {
  const heights = [...new Set(ring.map((p) => p.y))].sort((a, b) => a - b);
  const edges = ring
    .map((p, i) => [p, ring[(i + 1) % ring.length]] as const)
    .filter(([a, b]) => a.y !== b.y)
    .map(([a, b]) => (a.y < b.y ? ([a, b] as const) : ([b, a] as const)));
  const levels = heights.slice(1).map((high, i) => {
    const low = heights[i];
    return stretchesOf(
      edges.filter(([a, b]) => a.y <= low && b.y >= high),
      low,
      high,
    );
  });
  return chainOf(levels);
}

type RisingEdge = readonly [Point, Point];

/** The free stretches of a height band between two vertex heights, from the left. */
function stretchesOf(edges: readonly RisingEdge[], low: number, high: number): Slab[] {
  const at = ([a, b]: RisingEdge, y: number) => a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
  const middle = (low + high) / 2;
  const sorted = edges.map((edge) => ({ edge, x: at(edge, middle) })).sort((a, b) => a.x - b.x);
  const slabs: Slab[] = [];
  for (let i = 0; i + 1 < sorted.length; i += 2) {
    const [l, r] = [sorted[i].edge, sorted[i + 1].edge];
    slabs.push({ low, high, left: [at(l, low), at(l, high)], right: [at(r, low), at(r, high)] });
  }
  return slabs;
}

/** A stretch with the best way to it from below. */
interface Link {
  readonly slab: Slab;
  readonly below: Link | null;
  readonly area: number;
}

/** From the bottom to the top one stretch at each height, each open to the one below it, with the greatest area in all. */
function chainOf(levels: readonly (readonly Slab[])[]): Slab[] {
  let links: Link[] = [];
  let best: Link | null = null;
  for (const slabs of levels) {
    const before = links;
    links = slabs.map((slab) => {
      const under = before.filter((link) => isOpenTo(link.slab, slab));
      const below = under.reduce<Link | null>((a, b) => (a && a.area >= b.area ? a : b), null);
      return { slab, below, area: (below?.area ?? 0) + areaOfSlab(slab) };
    });
    best = links.reduce<Link | null>((a, b) => (a && a.area >= b.area ? a : b), best);
  }
  const chain: Slab[] = [];
  for (let link = best; link; link = link.below) chain.push(link.slab);
  return chain.reverse();
}

/** Whether two stretches, one right above the other, share a part of the level between them. */
function isOpenTo(below: Slab, above: Slab): boolean {
  return Math.min(below.right[1], above.right[0]) > Math.max(below.left[1], above.left[0]);
}

function areaOfSlab({ low, high, left, right }: Slab): number {
  return ((high - low) * (right[0] - left[0] + right[1] - left[1])) / 2;
}

interface Hill {
  readonly line: readonly SidePoint[];
  readonly depth: number;
}

/** The hills of a side's line, from below; those that lie within a larger one left out. */
function hillsOf(line: readonly SidePoint[]): Hill[] {
  const found: { hill: Hill; first: number; last: number }[] = [];
  const peaks = line.map((_, i) => i).sort((a, b) => line[b].in - line[a].in || a - b);
  for (const peak of peaks) {
    if (found.some(({ first, last }) => first <= peak && peak <= last)) continue;
    const base = Math.max(valley(line, peak, -1), valley(line, peak, 1));
    const depth = line[peak].in - base;
    if (depth < LEAST_DEPTH) continue;
    const foot = base + Math.min(FOOT.most, depth * FOOT.share);
    const [first, last] = [reach(line, peak, -1, foot), reach(line, peak, 1, foot)];
    found.push({ first, last, hill: { depth, line: withEnds(line, first, last, foot) } });
  }
  return found.sort((a, b) => a.first - b.first).map(({ hill }) => hill);
}

/** The lowest place between a peak and the next higher one on a side of it, or the end of the section. */
function valley(line: readonly SidePoint[], peak: number, step: 1 | -1): number {
  let least = line[peak].in;
  for (let i = peak + step; i >= 0 && i < line.length && line[i].in <= line[peak].in; i += step)
    least = Math.min(least, line[i].in);
  return least;
}

/** The last point on a side of a peak that is above its foot. */
function reach(line: readonly SidePoint[], peak: number, step: 1 | -1, foot: number): number {
  let i = peak;
  while (i + step >= 0 && i + step < line.length && line[i + step].in > foot) i += step;
  return i;
}

/** A hill's points with the places where it meets its foot. */
function withEnds(line: readonly SidePoint[], first: number, last: number, foot: number): SidePoint[] {
  const between = (a: SidePoint, b: SidePoint | undefined): SidePoint => {
    if (!b || a.in === b.in) return { up: a.up, in: foot };
    return { up: a.up + ((b.up - a.up) * (a.in - foot)) / (a.in - b.in), in: foot };
  };
  return [between(line[first], line[first - 1]), ...line.slice(first, last + 1), between(line[last], line[last + 1])];
}

function toIndent(side: IndentSide, { line, depth }: Hill, xOf: (depth: number) => number): Indent {
  const points = line
    .map((p) => ({ x: xOf(p.in), y: p.up }))
    .filter((p, i, all) => i === 0 || p.x !== all[i - 1].x || p.y !== all[i - 1].y);
  return { side, from: points[0].y, to: points[points.length - 1].y, depth, line: points };
}
