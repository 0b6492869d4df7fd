import { checkOutline } from './check-outline.ts';
import type { Point } from './point.ts';
import type { Region } from './region.ts';
import { asTrustedRing } from './ring.ts';
import { squaredDistance } from './segment-distance.ts';

/**
 * A closed outline with fewer vertices: no vertex left out lies further than `tolerance` from the edge that replaces it.
 * The result may touch or cross itself where the outline comes nearer to itself than the tolerance.
 *
 * @param tolerance nanometres.
 * @returns a subset of the vertices in order, at least three where the outline has as many.
 * @source D. Douglas & T. Peucker, The Canadian Cartographer 10 (1973) 112-122 (from memory).
 * @check tests/unit/geom/simplify.test.ts
 */
export function simplifyOutline(points: readonly Point[], tolerance: number): Point[] {
  if (points.length <= 3) return [...points];
  const far = farthestFrom(points, 0);
  const kept = new Set([0, far]);
  keepBetween(points, 0, far, tolerance, kept);
  keepBetween(points, far, points.length, tolerance, kept);
  if (kept.size < 3) kept.add(widestOff(points, 0, far));
  return [...kept].sort((a, b) => a - b).map((i) => points[i]);
}

/**
 * An open line with fewer vertices, as {@link simplifyOutline} does with a closed one; both ends stay.
 *
 * @param tolerance nanometres.
 * @returns a subset of the vertices in order.
 */
export function simplifyPath(points: readonly Point[], tolerance: number): Point[] {
  if (points.length <= 2) return [...points];
  const kept = new Set([0, points.length - 1]);
  keepBetween(points, 0, points.length - 1, tolerance, kept);
  return [...kept].sort((a, b) => a - b).map((i) => points[i]);
}

/** Keeps what is needed between two kept vertices; `last` may be one past the end, which is the first vertex again. */
function keepBetween(
  points: readonly Point[],
  first: number,
  last: number,
  tolerance: number,
  kept: Set<number>,
): void {
  const open: [number, number][] = [[first, last]];
  for (let span = open.pop(); span; span = open.pop()) {
    const [from, to] = span;
    const [a, b] = [points[from], points[to % points.length]];
    let worst = tolerance * tolerance;
    let split = -1;
    for (let i = from + 1; i < to; i++) {
      const off = squaredDistance(points[i].x, points[i].y, a.x, a.y, b.x, b.y);
      if (off > worst) [worst, split] = [off, i];
    }
    if (split < 0) continue;
    kept.add(split);
    open.push([from, split], [split, to]);
  }
}

function farthestFrom(points: readonly Point[], start: number): number {
  const { x, y } = points[start];
  let [most, at] = [-1, start];
  for (const [i, p] of points.entries()) {
    const square = (p.x - x) ** 2 + (p.y - y) ** 2;
    if (square > most) [most, at] = [square, i];
  }
  return at;
}

/** The vertex furthest from the line between two others. */
function widestOff(points: readonly Point[], i: number, k: number): number {
  const [a, b] = [points[i], points[k]];
  let [most, at] = [-1, (i + 1) % points.length];
  for (const [n, p] of points.entries()) {
    if (n === i || n === k) continue;
    const square = squaredDistance(p.x, p.y, a.x, a.y, b.x, b.y);
    if (square > most) [most, at] = [square, n];
  }
  return at;
}

/** An outline that may have been simplified, and by how much at most, nanometres. */
export interface Lightened {
  readonly points: readonly Point[];
  readonly within: number;
}

/** Tolerances tried in turn for an outline with very many vertices, nanometres. */
const STEPS = [100, 250, 500, 1_000];

/**
 * The outline itself, or where it has more than `most` vertices and can do with fewer, a simpler one that stands off it
 * by at most 1 um. An outline that is jagged all over stays as it is.
 */
export function lightenOutline(points: readonly Point[], most: number): Lightened {
  if (points.length <= most) return { points, within: 0 };
  for (const within of STEPS) {
    const simpler = simplifyOutline(points, within);
    if (simpler.length <= most && checkOutline(simpler) === null) return { points: simpler, within };
  }
  return { points, within: 0 };
}

/** {@link lightenOutline} for every boundary of a region; the region itself where nothing was left out. */
export function lightenRegion(region: Region, most: number): { readonly region: Region; readonly within: number } {
  let within = 0;
  const lighten = (boundary: readonly Point[]) => {
    const light = lightenOutline(boundary, most);
    within = Math.max(within, light.within);
    return light.points;
  };
  const light = region.map(({ outer, holes }) => ({ outer: asTrustedRing(lighten(outer)), holes: holes.map(lighten) }));
  return within === 0 ? { region, within } : { region: light, within };
}
