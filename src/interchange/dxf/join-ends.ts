import type { Point } from '../../geom/point.ts';
import { appendChain, type Chain, closeChain, endOf, reverseChain } from './chain.ts';

/** Chains joined as far as they go, and how many joints closed a gap wider than `silent`. */
export interface Joined {
  readonly chains: readonly Chain[];
  /** The joints over a gap wider than asked about, each with its width. */
  readonly gaps: readonly { readonly at: Point; readonly width: number }[];
  /** Where more than two ends meet and it is not plain which go together. */
  readonly forks: readonly Point[];
}

/** One end of a chain, by the chain's place in the list. */
interface End {
  readonly chain: number;
  readonly end: 0 | 1;
  readonly at: Point;
}

/**
 * Joins open chains whose ends lie within `tolerance` of each other, whichever way they run, and closes those that come
 * back to their start. Where three or more ends meet, chains that end nowhere else are set aside first; if more than two
 * ends are left, none of them is joined.
 *
 * @param tolerance in nanometres.
 * @param silent joints with a gap above this, in nanometres, are listed in `gaps`.
 * @check tests/unit/interchange/dxf-join.test.ts
 */
export function joinEnds(chains: readonly Chain[], tolerance: number, silent: number): Joined {
  const open = chains.filter((chain) => !chain.closed);
  if (open.length === 0) return { chains, gaps: [], forks: [] };
  const nodes = meetEnds(open, tolerance);
  const { partners, forks } = pairEnds(open, nodes);
  const gaps: { at: Point; width: number }[] = [];
  const done = new Set<number>();
  const made: Chain[] = [];
  for (const start of walkOrder(open.length, partners)) {
    if (done.has(start)) continue;
    made.push(followChain(open, start, partners, { done, gaps, silent }));
  }
  return { chains: [...chains.filter((chain) => chain.closed), ...made], gaps, forks };
}

/** Number of an end: twice its chain's place, plus one for its last point. */
function numberOf(chain: number, end: 0 | 1): number {
  return 2 * chain + end;
}

/** Width of a cell of the grid that ends are looked up in, in tolerances: most ends then need one cell only. */
const CELL = 16;

/** Ends that lie within the tolerance of each other: each joins the nearest end met before it. */
function meetEnds(open: readonly Chain[], tolerance: number): End[][] {
  const grid = new Map<string, End[][]>();
  const nodes: End[][] = [];
  const cell = (v: number) => Math.floor(v / (CELL * tolerance));
  for (const [chain, drawn] of open.entries()) {
    for (const end of [0, 1] as const) {
      const at = endOf(drawn, end);
      const node = findNode(grid, cell, at, tolerance);
      if (node) node.push({ chain, end, at });
      else {
        const fresh = [{ chain, end, at }];
        nodes.push(fresh);
        const key = `${cell(at.x)},${cell(at.y)}`;
        grid.set(key, [...(grid.get(key) ?? []), fresh]);
      }
    }
  }
  return nodes;
}

/** The nearest node whose first end lies within the tolerance. */
function findNode(grid: ReadonlyMap<string, End[][]>, cell: (v: number) => number, at: Point, tolerance: number) {
  let best: End[] | null = null;
  let least = tolerance;
  for (let i = cell(at.x - tolerance); i <= cell(at.x + tolerance); i += 1) {
    for (let k = cell(at.y - tolerance); k <= cell(at.y + tolerance); k += 1) {
      for (const node of grid.get(`${i},${k}`) ?? []) {
        const distance = Math.hypot(node[0].at.x - at.x, node[0].at.y - at.y);
        if (distance > least) continue;
        best = node;
        least = distance;
      }
    }
  }
  return best;
}

/** Which end goes on in which, by number. */
function pairEnds(open: readonly Chain[], nodes: readonly End[][]) {
  const degree = new Map<number, number>();
  for (const node of nodes) for (const { chain, end } of node) degree.set(numberOf(chain, end), node.length);
  const leadsOn = ({ chain, end }: End) => (degree.get(numberOf(chain, end === 0 ? 1 : 0)) ?? 0) > 1;
  const partners = new Map<number, number>();
  const forks: Point[] = [];
  for (const node of nodes) {
    const going = node.length > 2 ? node.filter(leadsOn) : node;
    if (going.length > 2) forks.push(node[0].at);
    if (going.length !== 2) continue;
    const [a, b] = going.map(({ chain, end }) => numberOf(chain, end));
    if (going[0].chain === going[1].chain && isShort(open[going[0].chain])) continue;
    partners.set(a, b);
    partners.set(b, a);
  }
  return { partners, forks };
}

/** Whether a chain cannot be closed into anything that encloses an area. */
function isShort({ vertices }: Chain): boolean {
  return vertices.length < 3 || (vertices.length === 3 && vertices.every(({ bulge = 0 }) => bulge === 0));
}

/** Chains with a free end first, so that each is followed from its start; then the rest, which go round. */
function walkOrder(count: number, partners: ReadonlyMap<number, number>): number[] {
  const all = Array.from({ length: count }, (_, i) => i);
  const isFree = (i: number) => !partners.has(numberOf(i, 0)) || !partners.has(numberOf(i, 1));
  return [...all.filter(isFree), ...all.filter((i) => !isFree(i))];
}

/** What is kept while chains are followed. */
interface Walk {
  readonly done: Set<number>;
  readonly gaps: { at: Point; width: number }[];
  readonly silent: number;
}

/** One chain with everything that follows from it, closed where it comes back. */
function followChain(open: readonly Chain[], start: number, partners: ReadonlyMap<number, number>, walk: Walk): Chain {
  const backwards = partners.has(numberOf(start, 0)) && !partners.has(numberOf(start, 1));
  const pieces = [backwards ? reverseChain(open[start]) : open[start]];
  walk.done.add(start);
  let tail = partners.get(numberOf(start, backwards ? 0 : 1));
  let closes = false;
  while (tail !== undefined) {
    const [chain, end] = [Math.floor(tail / 2), tail % 2];
    if (walk.done.has(chain)) {
      closes = true;
      break;
    }
    walk.done.add(chain);
    pieces.push(end === 0 ? open[chain] : reverseChain(open[chain]));
    tail = partners.get(numberOf(chain, end === 0 ? 1 : 0));
  }
  return joinPieces(pieces, closes, walk);
}

function joinPieces(pieces: readonly Chain[], closes: boolean, { gaps, silent }: Walk): Chain {
  for (let i = closes ? 0 : 1; i < pieces.length; i += 1) {
    const at = endOf(pieces[i], 0);
    const before = endOf(pieces[(i + pieces.length - 1) % pieces.length], 1);
    const width = Math.hypot(at.x - before.x, at.y - before.y);
    if (width > silent) gaps.push({ at, width });
  }
  const whole = appendAll(pieces);
  return closes ? closeChain(whole) : whole;
}

/** Joined in pairs, then pairs of pairs, so that a chain of many pieces is not copied once for each. */
function appendAll(pieces: readonly Chain[]): Chain {
  let list = [...pieces];
  while (list.length > 1) {
    const next: Chain[] = [];
    for (let i = 0; i < list.length; i += 2)
      next.push(i + 1 < list.length ? appendChain(list[i], list[i + 1]) : list[i]);
    list = next;
  }
  return list[0];
}
