import { NM_PER_UM, type Point } from '../geom/point.ts';
import { type Vertex, vertexAt } from '../geom/vertex.ts';
import type { DrawnPath } from './drawing.ts';

/** A closed line put together of a drawing's paths. */
export interface JoinedLoop {
  readonly label: string;
  /** In order, the last joined to the first; fractions of nanometres. */
  readonly vertices: readonly Vertex[];
  /** Lengths of the straight lines that had to be added to close it, nanometres, the longest first. */
  readonly gaps: readonly number[];
}

/** Ends no further apart than this are one point, nanometres. */
const SAME_POINT = NM_PER_UM;

/** Ends of two chains are brought together over a gap no wider than this share of all that is open. */
const WIDEST_SHARE = 0.05;

/** With more open chains than this none are joined: such a drawing is hatched, not outlined. */
export const MOST_CHAINS = 400;

/** One end of an open chain: its last vertex or its first. */
interface ChainEnd {
  readonly chain: number;
  readonly last: boolean;
  readonly at: Point;
}

interface Link {
  readonly from: number;
  readonly to: number;
  readonly gap: number;
}

/**
 * The loops of a drawing: closed paths as they are, open ones joined end to end, nearest ends first. Where ends do not
 * meet within 1 um, the straight line that joins them is told as a gap, so that nobody closes it unknowingly.
 *
 * @param paths with at least one vertex each.
 * @check tests/unit/interchange/take-outline.test.ts
 */
export function joinChains(paths: readonly DrawnPath[]): JoinedLoop[] {
  const open = paths.filter((path) => !path.closed && path.vertices.length > 1);
  const links = open.length > MOST_CHAINS ? [] : nearestLinks(open);
  const joined = new Map(followLinks(open, links).map(({ first, ...loop }) => [open[first], loop]));
  // In the order of the drawing; a loop of several chains stands where the first of them does.
  return paths.flatMap((path) => {
    if (path.closed) return [{ label: path.label, vertices: path.vertices, gaps: [] }];
    return joined.get(path) ?? [];
  });
}

/** Which ends belong together: each end once, the nearest pairs first. Ends are numbered two a chain, first and last. */
function nearestLinks(chains: readonly DrawnPath[]): Link[] {
  const ends: ChainEnd[] = chains.flatMap(({ vertices }, chain) => [
    { chain, last: false, at: vertices[0] },
    { chain, last: true, at: vertices[vertices.length - 1] },
  ]);
  const widest = Math.max(SAME_POINT, WIDEST_SHARE * spanOf(chains.flatMap(({ vertices }) => vertices)));
  const links: Link[] = [];
  for (let from = 0; from < ends.length; from++)
    for (let to = from + 1; to < ends.length; to++) {
      const gap = Math.hypot(ends[from].at.x - ends[to].at.x, ends[from].at.y - ends[to].at.y);
      if (gap <= widest) links.push({ from, to, gap });
    }
  const taken = new Set<number>();
  return links
    .sort((a, b) => a.gap - b.gap)
    .filter(({ from, to }) => {
      if (taken.has(from) || taken.has(to)) return false;
      taken.add(from).add(to);
      return true;
    });
}

function spanOf(points: readonly Point[]): number {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    [minX, maxX] = [Math.min(minX, x), Math.max(maxX, x)];
    [minY, maxY] = [Math.min(minY, y), Math.max(maxY, y)];
  }
  return points.length === 0 ? 0 : Math.hypot(maxX - minX, maxY - minY);
}

/** Walks along the links from chain to chain until a loop is closed or the links end. */
function followLinks(
  chains: readonly DrawnPath[],
  links: readonly Link[],
): (JoinedLoop & { readonly first: number })[] {
  const partner = new Map<number, Link & { to: number }>();
  for (const link of links) {
    partner.set(link.from, link);
    partner.set(link.to, { ...link, from: link.to, to: link.from });
  }
  const done = new Set<number>();
  const loops: (JoinedLoop & { readonly first: number })[] = [];
  // Chains with a free end first, or a walk would begin in the middle of a line.
  const order = chains.map((_, i) => i).sort((a, b) => Number(isRound(a)) - Number(isRound(b)) || a - b);
  function isRound(chain: number): boolean {
    return partner.has(2 * chain) && partner.has(2 * chain + 1);
  }
  for (const first of order) {
    if (done.has(first)) continue;
    const start = partner.has(2 * first) && !partner.has(2 * first + 1) ? 2 * first + 1 : 2 * first;
    const before = new Set(done);
    const loop = walkFrom(chains, partner, start, done);
    const own = [...done].filter((chain) => !before.has(chain));
    loops.push({ ...loop, first: Math.min(...own) });
  }
  return loops;
}

/** One loop from the end `start` of its first chain on. */
function walkFrom(
  chains: readonly DrawnPath[],
  partner: ReadonlyMap<number, Link>,
  start: number,
  done: Set<number>,
): JoinedLoop {
  const vertices: Vertex[] = [];
  const gaps: number[] = [];
  let label = '';
  let enter = start;
  for (;;) {
    const chain = enter >> 1;
    done.add(chain);
    label ||= chains[chain].label;
    const along = enter % 2 === 0 ? chains[chain].vertices : runBack(chains[chain].vertices);
    vertices.push(...along.slice(0, -1), straightFrom(along[along.length - 1]));
    const link = partner.get(enter ^ 1);
    const gap = link ? link.gap : distance(vertices[0], vertices[vertices.length - 1]);
    if (gap <= SAME_POINT) vertices.pop();
    else gaps.push(gap);
    if (!link || done.has(link.to >> 1)) return { label, vertices, gaps: gaps.sort((a, b) => b - a) };
    enter = link.to;
  }
}

/** An open chain run the other way; each bulge goes with its edge and changes its sign. */
function runBack(vertices: readonly Vertex[]): Vertex[] {
  return vertices.map((_, i) => {
    const { x, y } = vertices[vertices.length - 1 - i];
    return vertexAt(x, y, -(vertices[vertices.length - 2 - i]?.bulge ?? 0));
  });
}

function straightFrom({ x, y }: Vertex): Vertex {
  return { x, y };
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
