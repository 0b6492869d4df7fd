import { boxOf, type Point } from '../geom/point.ts';
import type { Ring } from '../geom/ring.ts';
import type { FacePoint } from './groove-shape.ts';

/** The part of a section between two neighbouring vertex heights: where its leftmost and rightmost edges run. */
interface Slab {
  readonly low: number;
  readonly high: number;
  readonly left: readonly [number, number];
  readonly right: readonly [number, number];
}

/** The four sides of the box that a blade's faces, back and upper edge lie on, nanometres. */
export interface BladeBox {
  readonly left: number;
  readonly right: number;
  readonly back: number;
  readonly top: number;
}

/** A stretch of a face that lies deeper than the tolerance: a groove, a step, or a rounded end. Heights above the back. */
export interface FaceRun {
  readonly from: number;
  readonly to: number;
  /** Greatest depth. */
  readonly deepest: number;
  /** Depth over height, piecewise straight, upwards. */
  readonly line: readonly FacePoint[];
}

/** A face of a blade as it stands in an outline. */
export interface Face {
  readonly runs: readonly FaceRun[];
  /** Total height of what lies on the face itself. */
  readonly land: number;
  /** The longest stretch of it, as a depth line. */
  readonly longest: readonly FacePoint[];
}

/** The section cut at every vertex height. */
export function slabsOf(ring: Ring): Slab[] {
  const heights = [...new Set(ring.map((p) => p.y))].sort((a, b) => a - b);
  const edges = ring
    .map((p, i) => [p, ring[(i + 1) % ring.length]] as const)
    .filter(([a, b]) => a.y !== b.y)
    .map(([a, b]) => (a.y < b.y ? ([a, b] as const) : ([b, a] as const)))
    .sort(([a], [b]) => a.y - b.y);
  let active: (typeof edges)[number][] = [];
  let next = 0;
  return heights.slice(1).map((high, i) => {
    const low = heights[i];
    active = active.filter(([, b]) => b.y >= high);
    for (; next < edges.length && edges[next][0].y <= low; next++) active.push(edges[next]);
    return slabOf(active, low, high);
  });
}

function slabOf(edges: readonly (readonly [Point, Point])[], low: number, high: number): Slab {
  const middle = (low + high) / 2;
  const at = ([a, b]: readonly [Point, Point], y: number) => a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
  const byMiddle = edges.map((edge) => ({ edge, x: at(edge, middle) }));
  const left = byMiddle.reduce((best, e) => (e.x < best.x ? e : best)).edge;
  const right = byMiddle.reduce((best, e) => (e.x > best.x ? e : best)).edge;
  return { low, high, left: [at(left, low), at(left, high)], right: [at(right, low), at(right, high)] };
}

/** A face or edge of a blade has at least this share of its height or thickness: what is shorter is a spur on it. */
const LEAST_SHARE = { upright: 0.02, level: 0.05 } as const;

/**
 * Where a blade's faces, back and upper edge lie in an outline: on each side the middle of the outermost stretch, twice
 * the tolerance deep, that is long enough to be one.
 */
export function bladeBox(ring: Ring, slabs: readonly Slab[], tolerance: number): BladeBox {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  const reach = 2 * tolerance;
  // A piece that itself goes further across than that leans: it belongs to no face.
  const pieceOf = (a: number, b: number, weight: number) =>
    Math.abs(a - b) <= reach ? [{ at: (a + b) / 2, weight }] : [];
  const upright = (side: 'left' | 'right') =>
    slabs.flatMap(({ low, high, [side]: [a, b] }) => pieceOf(a, b, high - low));
  const level = ring.flatMap((p, i) => {
    const q = ring[(i + 1) % ring.length];
    return pieceOf(p.y, q.y, Math.abs(q.x - p.x));
  });
  const face = LEAST_SHARE.upright * (maxY - minY);
  const end = LEAST_SHARE.level * (maxX - minX);
  return {
    left: -outermostMiddle(mirrored(upright('left')), -minX, reach, face),
    right: outermostMiddle(upright('right'), maxX, reach, face),
    back: -outermostMiddle(mirrored(level), -minY, reach, end),
    top: outermostMiddle(level, maxY, reach, end),
  };
}

interface Weighted {
  readonly at: number;
  readonly weight: number;
}

function mirrored(values: readonly Weighted[]): Weighted[] {
  return values.map(({ at, weight }) => ({ at: -at, weight }));
}

/** The weighted median of the highest values that span no more than `reach` and weigh at least `least`; else `highest`. */
function outermostMiddle(values: readonly Weighted[], highest: number, reach: number, least: number): number {
  const sorted = [...values].sort((a, b) => b.at - a.at);
  let [weight, to] = [0, 0];
  for (let from = 0; from < sorted.length; from++) {
    for (; to < sorted.length && sorted[to].at >= sorted[from].at - reach; to++) weight += sorted[to].weight;
    if (weight >= least && weight > 0) return medianOf(sorted.slice(from, to));
    weight -= sorted[from].weight;
  }
  return highest;
}

/** The stretches of one face that lie deeper than `tolerance`, from the back upwards; what is no larger than noise is left out. */
export function readFace(slabs: readonly Slab[], box: BladeBox, side: 'left' | 'right', tolerance: number): Face {
  const depthOf = (x: number) => (side === 'left' ? x - box.left : box.right - x);
  const ends = [tolerance, box.top - box.back - tolerance] as const;
  const lines = slabs.flatMap(({ low, high, [side]: [a, b] }) =>
    between({ up: low - box.back, in: depthOf(a) }, { up: high - box.back, in: depthOf(b) }, ends),
  );
  const runs: FaceRun[] = [];
  const lands: FacePoint[][] = [[]];
  let open: FacePoint[] = [];
  const close = () => {
    if (open.length > 0) runs.push(runOf(open, tolerance));
    open = [];
  };
  for (const [low, high] of lines) {
    if (Math.max(low.in, high.in) > tolerance) {
      if (open.length === 0) lands.push([]);
      open.push(low, high);
    } else {
      close();
      lands[lands.length - 1].push(low, high);
    }
  }
  close();
  return {
    runs: runs.filter(({ deepest, from, to }) => Math.min(deepest, to - from) > 2 * tolerance),
    ...measured(lands),
  };
}

function measured(lands: readonly FacePoint[][]): Pick<Face, 'land' | 'longest'> {
  const lengthOf = (land: readonly FacePoint[]) => (land.length > 0 ? land[land.length - 1].up - land[0].up : 0);
  const longest = lands.reduce((best, land) => (lengthOf(land) > lengthOf(best) ? land : best));
  return { land: lands.reduce((sum, land) => sum + lengthOf(land), 0), longest };
}

/** The part of a straight piece between two heights; what lies nearer to the ends of the blade tells nothing of a face. */
function between(a: FacePoint, b: FacePoint, [least, most]: readonly [number, number]): [FacePoint, FacePoint][] {
  const [from, to] = [Math.max(a.up, least), Math.min(b.up, most)];
  if (from >= to) return [];
  const at = (up: number) => ({ up, in: a.in + ((b.in - a.in) * (up - a.up)) / (b.up - a.up) });
  return [[at(from), at(to)]];
}

function runOf(line: readonly FacePoint[], tolerance: number): FaceRun {
  return {
    from: crossingUp(line, tolerance) ?? line[0].up,
    to: crossingUp([...line].reverse(), tolerance) ?? line[line.length - 1].up,
    deepest: Math.max(...line.map((p) => p.in)),
    line,
  };
}

/** Height at which a depth line first reaches `depth`, or null where it never does. */
export function crossingUp(line: readonly FacePoint[], depth: number): number | null {
  const i = line.findIndex((p) => p.in >= depth);
  if (i < 0) return null;
  const [a, b] = [line[Math.max(0, i - 1)], line[i]];
  return a.in >= depth || b.in === a.in ? b.up : a.up + ((b.up - a.up) * (depth - a.in)) / (b.in - a.in);
}

/** The depth that most of a run's height has, give or take the tolerance: its root, where it has one. */
export function commonDepth({ line, deepest }: FaceRun, tolerance: number): number {
  const pieces = line.flatMap((p, i) =>
    i % 2 === 0
      ? [{ at: (p.in + line[i + 1].in) / 2, weight: line[i + 1].up - p.up, lean: line[i + 1].in - p.in }]
      : [],
  );
  const upright = pieces.filter(({ weight, lean }) => Math.abs(lean) < 0.2 * weight + tolerance);
  let best = { weight: 0, at: deepest };
  for (const { at } of upright) {
    const near = upright.filter((p) => Math.abs(p.at - at) <= tolerance);
    const weight = near.reduce((sum, p) => sum + p.weight, 0);
    if (weight > best.weight * 1.001) best = { weight, at: medianOf(near) };
  }
  return best.weight > 0 ? best.at : deepest;
}

function medianOf(values: readonly Weighted[]): number {
  const sorted = [...values].sort((a, b) => a.at - b.at);
  const half = sorted.reduce((sum, v) => sum + v.weight, 0) / 2;
  let sum = 0;
  for (const { at, weight } of sorted) {
    sum += weight;
    if (sum >= half) return at;
  }
  return 0;
}

/**
 * How far the middle of a face's longest land stands out before its ends, nanometres: half of the middle against the two
 * outer quarters. A straight land has 0, whichever way it leans; a circle, taken for a face, bows by about the tolerance.
 */
export function bowOf(land: readonly FacePoint[]): number {
  const pieces = land.flatMap((p, i) => (i % 2 === 0 ? [[p, land[i + 1]] as const] : []));
  if (pieces.length === 0) return 0;
  const [from, to] = [land[0].up, land[land.length - 1].up];
  const mean = (low: number, high: number) => {
    const cut = pieces.flatMap(([a, b]) => between(a, b, [low, high]));
    const height = cut.reduce((sum, [a, b]) => sum + b.up - a.up, 0);
    return cut.reduce((sum, [a, b]) => sum + ((a.in + b.in) / 2) * (b.up - a.up), 0) / height;
  };
  const quarter = (to - from) / 4;
  return (mean(from, from + quarter) + mean(to - quarter, to)) / 2 - mean(from + quarter, to - quarter);
}
