import { difference, offset, union, unionOfLoops } from '../geom/clip.ts';
import { convexParts } from '../geom/convex-parts.ts';
import { type Box, boxOf, type Point } from '../geom/point.ts';
import { boundariesOf, type Region, regionOf } from '../geom/region.ts';
import { type Ring, ringOfBox } from '../geom/ring.ts';

/** Margin of plug round the opening and of window round the answer, nanometres: wider than any part's rounding. */
const FRAME = 1_000_000;

/**
 * The inner-fit region a second way, by areas only: plug and blank are cut into convex parts, each pair of parts
 * forbids the convex sum of one and the mirrored other, and clipper-lib unites what is forbidden.
 *
 * Slower by three orders of magnitude than window subtraction and blind to contact, but nothing in it is shared
 * with that method except clipper-lib's offset: this is what `--verify` and the tests compare with.
 *
 * @returns the region within the window, whole nanometres; parts without area are missing.
 * @source definition of the Minkowski sum; decomposition as in Flato & Halperin 2000 (from memory).
 */
export function innerFitByParts(opening: Region, blank: readonly Ring[]): Region {
  const inner = boxOf(boundariesOf(opening).flat());
  const size = boxOf(blank.flat());
  const window = {
    minX: inner.minX - size.minX,
    minY: inner.minY - size.minY,
    maxX: inner.maxX - size.maxX,
    maxY: inner.maxY - size.maxY,
  };
  if (window.minX >= window.maxX || window.minY >= window.maxY) return [];
  const plug = convexParts(difference(regionOf(ringOfBox(inner, FRAME)), opening));
  const mirrored = convexParts(blank.flatMap(regionOf)).map((part) => part.map((p) => ({ x: -p.x, y: -p.y })));
  const boxes = mirrored.map(boxOf);
  const sums = plug.flatMap((a) => {
    const around = boxOf(a);
    return mirrored.filter((_, i) => meets(sumOfBoxes(around, boxes[i]), window)).map((b) => sumOfConvex(a, b));
  });
  return difference(regionOf(ringOfBox(window)), uniteAll(sums));
}

/** `region` shrunk by `distance`; nanometres. */
export function shrink(region: Region, distance: number): Region {
  return distance > 0 ? offset(region, -distance, 'round', 5) : region;
}

function sumOfBoxes(a: Box, b: Box): Box {
  return { minX: a.minX + b.minX, minY: a.minY + b.minY, maxX: a.maxX + b.maxX, maxY: a.maxY + b.maxY };
}

function meets(box: Box, window: Box): boolean {
  return box.maxX > window.minX && box.minX < window.maxX && box.maxY > window.minY && box.minY < window.maxY;
}

/** The union of many loops, by halves: clipper-lib slows down steeply with loops that overlap. */
function uniteAll(loops: readonly Point[][]): Region {
  if (loops.length <= 12) return unionOfLoops(loops);
  const half = loops.length >> 1;
  return union(uniteAll(loops.slice(0, half)), uniteAll(loops.slice(half)));
}

/** The sum of two convex polygons: the convex hull of all sums of a vertex of each. */
function sumOfConvex(a: readonly Point[], b: readonly Point[]): Point[] {
  return convexHull(a.flatMap((p) => b.map((q) => ({ x: p.x + q.x, y: p.y + q.y }))));
}

/** Counter-clockwise convex hull (A. M. Andrew's monotone chain, 1979). */
function convexHull(points: Point[]): Point[] {
  const sorted = [...points].sort((p, q) => p.x - q.x || p.y - q.y);
  const half = (list: Point[]) => {
    const chain: Point[] = [];
    for (const p of list) {
      while (chain.length > 1 && turnsRight(chain[chain.length - 2], chain[chain.length - 1], p)) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

function turnsRight(a: Point, b: Point, c: Point): boolean {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) <= 0;
}
