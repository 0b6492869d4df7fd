import type { Point } from '../geom/point.ts';
import type { Ring } from '../geom/ring.ts';

/** The thinnest part of a blade; lengths in nanometres. */
export interface Web {
  /** Material from left to right at this height, the sum where a height is crossed more than once. */
  readonly thickness: number;
  /** The band of heights that is as thin as this, the lowest band where there are several. */
  readonly from: number;
  readonly to: number;
}

/** Thickness of the section between two neighbouring vertex heights, where it changes evenly. */
interface Slab {
  readonly low: number;
  readonly high: number;
  readonly atLow: number;
  readonly atHigh: number;
}

/** Lengths closer than this, in nanometres, count as the same: vertices are whole nanometres. */
const SAME_LENGTH = 0.5;

/**
 * The web of a section: its least horizontal thickness between the grooves.
 *
 * A rounded or pointed end of the blade is not a web: from each end, the part in which the thickness only grows
 * is left out. A plain blade therefore has its full thickness as web, whatever its back looks like. A step that
 * runs out at the back counts, since there the thickness stays.
 *
 * @param ring the section, nanometres.
 * @accuracy exact for the polygon: the thickness is piecewise linear in height, so its least value stands at a
 *   vertex height, which is looked at from below and from above.
 * @check tests/unit/profile/measure-web.test.ts
 */
export function measureWeb(ring: Ring): Web {
  const slabs = slabsOf(ring);
  const first = taperLength(slabs);
  const last = slabs.length - taperLength(slabs.map(upsideDown).reverse());
  return first < last ? thinnest(slabs.slice(first, last)) : widest(slabs, first);
}

/** The section cut at every vertex height. */
function slabsOf(ring: Ring): Slab[] {
  const heights = [...new Set(ring.map((p) => p.y))].sort((a, b) => a - b);
  const rising = edgesOf(ring).sort((a, b) => Math.min(a[0].y, a[1].y) - Math.min(b[0].y, b[1].y));
  let active: (typeof rising)[number][] = [];
  let next = 0;
  return heights.slice(1).map((high, i) => {
    const low = heights[i];
    active = active.filter(([a, b]) => Math.max(a.y, b.y) >= high);
    for (; next < rising.length && Math.min(rising[next][0].y, rising[next][1].y) <= low; next++)
      active.push(rising[next]);
    return { low, high, atLow: thicknessAt(active, low), atHigh: thicknessAt(active, high) };
  });
}

/** The edges that are not level. */
function edgesOf(ring: Ring): (readonly [Point, Point])[] {
  return ring.map((p, i) => [p, ring[(i + 1) % ring.length]] as const).filter(([a, b]) => a.y !== b.y);
}

/** Counter-clockwise, an edge that goes up has the material on its left: it ends a stretch, one that goes down begins it. */
function thicknessAt(edges: readonly (readonly [Point, Point])[], y: number): number {
  return edges.reduce((sum, [a, b]) => {
    const x = a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
    return b.y > a.y ? sum + x : sum - x;
  }, 0);
}

/** How many slabs from the bottom make the end of the blade: the thickness grows all through them without a jump. */
function taperLength(slabs: readonly Slab[]): number {
  const stop = slabs.findIndex(
    (s, i) => s.atHigh <= s.atLow + SAME_LENGTH || (i > 0 && Math.abs(s.atLow - slabs[i - 1].atHigh) > SAME_LENGTH),
  );
  return stop < 0 ? slabs.length : stop;
}

/** The same slab seen from above. */
function upsideDown(slab: Slab): Slab {
  return { low: -slab.high, high: -slab.low, atLow: slab.atHigh, atHigh: slab.atLow };
}

/** The thickness where the two ends of a section without a web meet, above the first `below` slabs. */
function widest(slabs: readonly Slab[], below: number): Web {
  const [height, thickness] =
    below > 0 ? [slabs[below - 1].high, slabs[below - 1].atHigh] : [slabs[0].low, slabs[0].atLow];
  return { thickness, from: height, to: height };
}

/** The least thickness in `slabs` and the lowest band that has it. */
function thinnest(slabs: readonly Slab[]): Web {
  const thickness = Math.min(...slabs.map((s) => Math.min(s.atLow, s.atHigh)));
  const thin = (length: number) => length <= thickness + SAME_LENGTH;
  const start = slabs.findIndex((s) => thin(s.atLow) || thin(s.atHigh));
  const from = thin(slabs[start].atLow) ? slabs[start].low : slabs[start].high;
  let to = from;
  for (let i = start; i < slabs.length && slabs[i].low <= to; i++) {
    if (thin(slabs[i].atLow) && thin(slabs[i].atHigh)) to = slabs[i].high;
  }
  return { thickness, from, to };
}
