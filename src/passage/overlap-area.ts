import type { Point } from '../geom/point.ts';
import { boundariesOf, type Region } from '../geom/region.ts';
import { largestArea, moveRegion, share } from './overlap-regions.ts';

/**
 * The boundaries of a region as one list of edges, in half nanometres: the regions of a pair stand on even and on odd
 * numbers, so that level and upright edges never lie on each other.
 */
interface Loops {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** The number of the vertex that ends the edge of this number. */
  readonly next: Int32Array;
  /** Where each boundary begins, and the end of the last one. */
  readonly starts: readonly number[];
}

/**
 * The area of the largest connected part that two regions share, for many moves of the second one; about three times
 * faster than clipping.
 *
 * The boundary of what is shared is made of the stretches of each boundary that lie inside the other region. The edges
 * are tried pair by pair for crossings, exactly; stretches that meet in a crossing go round the same part. What a
 * boundary's walk round does not bear out, and what has holes, is clipped instead.
 *
 * @returns square nanometres, off by less than half a nanometre times the length of the boundary; 0 where nothing is shared.
 * @source Green's theorem.
 * @check tests/unit/passage/overlap-area.test.ts (against clipper-lib)
 */
export function overlapMeter(still: Region, moving: Region): (move: Point) => number {
  const fixed = withBands(loopsOf(still, 0));
  const home = loopsOf(moving, 1);
  const moved = { ...home, x: new Float64Array(home.x.length), y: new Float64Array(home.y.length) };
  return (move) => {
    for (let i = 0; i < home.x.length; i++) {
      moved.x[i] = home.x[i] + 2 * move.x;
      moved.y[i] = home.y[i] + 2 * move.y;
    }
    const area = largestShared(fixed, moved);
    return area ?? largestArea(share(still, moveRegion(moving, move)));
  };
}

function loopsOf(region: Region, odd: 0 | 1): Loops {
  const boundaries = boundariesOf(region);
  const points = boundaries.flat();
  const next = new Int32Array(points.length);
  const starts = [0];
  for (const { length } of boundaries) {
    const start = starts[starts.length - 1];
    for (let i = 0; i < length; i++) next[start + i] = start + ((i + 1) % length);
    starts.push(start + length);
  }
  const x = Float64Array.from(points, (p) => 2 * p.x + odd);
  const y = Float64Array.from(points, (p) => 2 * p.y + odd);
  return { x, y, next, starts };
}

/** The edges by the bands of height that they reach into, so that only those at the same height are tried. */
interface Banded extends Loops {
  readonly low: number;
  readonly height: number;
  /** Edges of band k: from `from[k]` to `from[k + 1]` in `edges`. */
  readonly from: Int32Array;
  readonly edges: Int32Array;
  /** The lowest band of each edge. */
  readonly first: Int32Array;
}

const BANDS = 64;

function withBands(loops: Loops): Banded {
  const { y, next } = loops;
  const low = y.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const high = y.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  const height = Math.max(1, (high - low) / BANDS);
  const lists: number[][] = Array.from({ length: BANDS }, () => []);
  const first = new Int32Array(y.length);
  for (let i = 0; i < y.length; i++) {
    first[i] = bandOf(Math.min(y[i], y[next[i]]), low, height);
    const last = bandOf(Math.max(y[i], y[next[i]]), low, height);
    for (let band = first[i]; band <= last; band++) lists[band].push(i);
  }
  const from = new Int32Array(BANDS + 1);
  for (const [band, list] of lists.entries()) from[band + 1] = from[band] + list.length;
  return { ...loops, low, height, from, edges: Int32Array.from(lists.flat()), first };
}

function bandOf(y: number, low: number, height: number): number {
  return Math.max(0, Math.min(BANDS - 1, Math.floor((y - low) / height)));
}

/** A place on an edge, as the share of its length, and the number of the crossing there. */
interface Crossing {
  readonly at: number;
  readonly id: number;
}

/** The crossings of each edge of both regions. */
interface Crossings {
  count: number;
  readonly onA: Crossing[][];
  readonly onB: Crossing[][];
}

/** The parts as sets of nodes: one node for each crossing and one for the start of each boundary. */
interface Parts {
  readonly parent: number[];
  /** Green's integral over the stretches that begin at a node. */
  readonly sums: number[];
}

/** A part goes round a hole where its integral is below this, in quarters of a square nanometre twice. */
const HOLE = -8e6;

/** The area of the largest shared part; null where the crossings found do not fit together, or a part has a hole. */
function largestShared(a: Banded, b: Loops): number | null {
  const crossings: Crossings = { count: 0, onA: [], onB: [] };
  findCrossings(a, b, crossings);
  const { count, onA, onB } = crossings;
  const loopsOfA = a.starts.length - 1;
  const nodes = count + loopsOfA + b.starts.length - 1;
  const parts: Parts = { parent: Array.from({ length: nodes }, (_, i) => i), sums: new Array(nodes).fill(0) };
  if (!walkRound(a, b, onA, parts, count) || !walkRound(b, a, onB, parts, count + loopsOfA)) return null;
  const areas = new Array<number>(nodes).fill(0);
  for (const [node, sum] of parts.sums.entries()) areas[rootOf(parts, node)] += sum;
  if (areas.some((area) => area < HOLE)) return null;
  // Twice the area, in quarters of a square nanometre.
  return areas.reduce((most, area) => Math.max(most, area), 0) / 8;
}

function rootOf({ parent }: Parts, node: number): number {
  let root = node;
  while (parent[root] !== root) {
    parent[root] = parent[parent[root]];
    root = parent[root];
  }
  return root;
}

function join(parts: Parts, one: number, other: number): void {
  parts.parent[rootOf(parts, one)] = rootOf(parts, other);
}

/** Which side of the line from edge `i` of a the point is on: above 0 left, exact. */
function sideOf(a: Loops, i: number, x: number, y: number): number {
  const k = a.next[i];
  return (a.x[k] - a.x[i]) * (y - a.y[i]) - (a.y[k] - a.y[i]) * (x - a.x[i]);
}

/** Where edges cross, for each edge of both. */
function findCrossings(a: Banded, b: Loops, found: Crossings): void {
  for (let j = 0; j < b.x.length; j++) {
    const [y, end] = [b.y[j], b.y[b.next[j]]];
    const first = bandOf(Math.min(y, end), a.low, a.height);
    const last = bandOf(Math.max(y, end), a.low, a.height);
    for (let band = first; band <= last; band++)
      for (let n = a.from[band]; n < a.from[band + 1]; n++) {
        const i = a.edges[n];
        // An edge in several bands is tried in the first one that both reach into.
        if (band === Math.max(first, a.first[i]) && boxesMeet(a, i, b, j)) cross(a, i, b, j, found);
      }
  }
}

function boxesMeet(a: Loops, i: number, b: Loops, j: number): boolean {
  const [k, l] = [a.next[i], b.next[j]];
  return spansMeet(a.y[i], a.y[k], b.y[j], b.y[l]) && spansMeet(a.x[i], a.x[k], b.x[j], b.x[l]);
}

function spansMeet(p: number, q: number, r: number, s: number): boolean {
  return !((p < r && p < s && q < r && q < s) || (p > r && p > s && q > r && q > s));
}

/** A touch counts as if it lay to the left: the same for both edges at a vertex, so that each pass through is counted once. */
function cross(a: Loops, i: number, b: Loops, j: number, found: Crossings): void {
  const [k, l] = [a.next[i], b.next[j]];
  const [s1, s2] = [sideOf(a, i, b.x[j], b.y[j]), sideOf(a, i, b.x[l], b.y[l])];
  if (s1 >= 0 === s2 >= 0) return;
  const [s3, s4] = [sideOf(b, j, a.x[i], a.y[i]), sideOf(b, j, a.x[k], a.y[k])];
  if (s3 >= 0 === s4 >= 0) return;
  const id = found.count++;
  note(found.onB, j, { at: s1 / (s1 - s2), id });
  note(found.onA, i, { at: s3 / (s3 - s4), id });
}

function note(crossings: Crossing[][], edge: number, crossing: Crossing): void {
  if (crossings[edge]) crossings[edge].push(crossing);
  else crossings[edge] = [crossing];
}

const OUTSIDE = -1;

/** Adds the stretches of the boundaries of `a` inside `b` to their parts; false where a walk round does not close. */
function walkRound(
  a: Loops,
  b: Loops,
  crossings: readonly (Crossing[] | undefined)[],
  parts: Parts,
  firstNode: number,
): boolean {
  for (let loop = 0; loop + 1 < a.starts.length; loop++) {
    const start = a.starts[loop];
    const began = contains(b, a.x[start], a.y[start]);
    let node = began ? firstNode + loop : OUTSIDE;
    for (let i = start; i < a.starts[loop + 1]; i++) node = walkEdge(a, i, crossings[i], parts, node);
    if ((node !== OUTSIDE) !== began) return false;
    if (began) join(parts, node, firstNode + loop);
  }
  return true;
}

/** Goes along one edge; takes and gives the node of the stretch that it is on, or that it is outside. */
function walkEdge(a: Loops, i: number, crossings: Crossing[] | undefined, parts: Parts, before: number): number {
  let [node, from] = [before, 0];
  if (crossings && crossings.length > 1) crossings.sort((p, q) => p.at - q.at);
  for (const { at, id } of crossings ?? []) {
    if (node === OUTSIDE) node = id;
    else {
      parts.sums[node] += crossOf(a, i, from, at);
      join(parts, node, id);
      node = OUTSIDE;
    }
    from = at;
  }
  if (node !== OUTSIDE) parts.sums[node] += crossOf(a, i, from, 1);
  return node;
}

/** The cross product of the ends of a stretch of an edge: twice the area seen from the origin. */
function crossOf(a: Loops, i: number, from: number, to: number): number {
  const k = a.next[i];
  return (to - from) * (a.x[i] * a.y[k] - a.x[k] * a.y[i]);
}

/** Whether a point that is on no vertex's height lies inside. */
function contains(a: Loops, x: number, y: number): boolean {
  let inside = false;
  for (let i = 0; i < a.x.length; i++) {
    const k = a.next[i];
    if (a.y[i] > y === a.y[k] > y) continue;
    if (sideOf(a, i, x, y) > 0 === a.y[k] > a.y[i]) inside = !inside;
  }
  return inside;
}
