import type { Point } from '../../../src/geom/point.ts';
import type { OpeningShape } from '../../cases/fit-case.ts';

/*
 * The convolution of two closed outlines: closed curves whose winding number counts how often two shapes meet. Of the
 * opening's outline walked backwards (the outline of what is not opening) and the mirrored blank, the curves wind -1
 * times round exactly those translations that keep the blank inside.
 *
 * Source: Guibas, Ramshaw & Stolfi, "A kinetic framework for computational geometry", FOCS 1983; Wein, "Exact and
 * efficient construction of planar Minkowski sums using the convolution method", ESA 2006 (both from memory).
 */

/** An outline with the direction of every edge and the turn at every vertex (cross product), as flat arrays. */
interface Walk {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly dx: Float64Array;
  readonly dy: Float64Array;
  readonly turn: Float64Array;
}

/** The curves, flat x, y lists; wind -1 times round every translation that keeps the blank in the opening. */
export function convolutionOf(opening: OpeningShape, blank: readonly Point[]): number[][] {
  const mirrored = walk(blank.map((p) => ({ x: -p.x, y: -p.y })));
  const backwards = [[...opening.outer].reverse(), ...opening.islands];
  return backwards.flatMap((outline) => cyclesOf(walk(outline), mirrored));
}

function walk(outline: readonly Point[]): Walk {
  const count = outline.length;
  const dx = Float64Array.from(outline, (p, i) => outline[(i + 1) % count].x - p.x);
  const dy = Float64Array.from(outline, (p, i) => outline[(i + 1) % count].y - p.y);
  const turn = Float64Array.from(outline, (_, i) => {
    const before = (i + count - 1) % count;
    return dx[before] * dy[i] - dy[before] * dx[i];
  });
  return { count, x: Float64Array.from(outline, (p) => p.x), y: Float64Array.from(outline, (p) => p.y), dx, dy, turn };
}

/**
 * Edges of the convolution as links between pairs of vertices: an edge of one outline beside a vertex of the other
 * whose turn sweeps over the edge's direction, walked backwards where that turn is to the right. Of two edges in the
 * same direction the one of `p` counts as a little further to the left. Every pair of vertices has as many links in
 * as out, so the links fall into closed curves.
 */
function cyclesOf(p: Walk, q: Walk): number[][] {
  const links = new Links(p.count * q.count);
  const m = q.count;
  for (let j = 0; j < m; j++) {
    const sweep = new Sweep(q, j, true);
    for (let i = 0; i < p.count; i++) {
      if (sweep.passes(p.dx[i], p.dy[i]))
        links.add(i * m + j, (i + 1 === p.count ? 0 : i + 1) * m + j, sweep.toTheLeft);
    }
  }
  for (let i = 0; i < p.count; i++) {
    const sweep = new Sweep(p, i, false);
    for (let j = 0; j < m; j++) {
      if (sweep.passes(q.dx[j], q.dy[j])) links.add(i * m + j, i * m + (j + 1 === m ? 0 : j + 1), sweep.toTheLeft);
    }
  }
  return walkedOff(links, p, q);
}

/** The directions that an outline's turn at one vertex goes through; of the two ends only one counts. */
class Sweep {
  readonly toTheLeft: boolean;
  private readonly ux: number;
  private readonly uy: number;
  private readonly vx: number;
  private readonly vy: number;

  constructor(
    w: Walk,
    vertex: number,
    private readonly startCounts: boolean,
  ) {
    const before = (vertex + w.count - 1) % w.count;
    this.toTheLeft = w.turn[vertex] > 0;
    const [first, last] = this.toTheLeft ? [before, vertex] : [vertex, before];
    const empty = w.turn[vertex] === 0;
    [this.ux, this.uy] = empty ? [0, 0] : [w.dx[first], w.dy[first]];
    [this.vx, this.vy] = empty ? [0, 0] : [w.dx[last], w.dy[last]];
  }

  passes(x: number, y: number): boolean {
    const fromStart = this.ux * y - this.uy * x;
    const toEnd = x * this.vy - y * this.vx;
    return this.startCounts ? fromStart >= 0 && toEnd > 0 : fromStart > 0 && toEnd >= 0;
  }
}

/** Links that lead from node to node, each to be followed once. */
class Links {
  private readonly firstOf: Int32Array;
  private readonly target: number[] = [];
  private readonly after: number[] = [];

  constructor(readonly nodes: number) {
    this.firstOf = new Int32Array(nodes).fill(-1);
  }

  add(from: number, to: number, forwards: boolean): void {
    const start = forwards ? from : to;
    this.target.push(forwards ? to : from);
    this.after.push(this.firstOf[start]);
    this.firstOf[start] = this.target.length - 1;
  }

  /** Where an unused link leads, which then counts as used; -1 where there is none. */
  follow(node: number): number {
    const link = this.firstOf[node];
    if (link < 0) return -1;
    this.firstOf[node] = this.after[link];
    return this.target[link];
  }
}

/** Follows unused links until every one is used. */
function walkedOff(links: Links, p: Walk, q: Walk): number[][] {
  const cycles: number[][] = [];
  for (let start = 0; start < links.nodes; start++) {
    for (let next = links.follow(start); next >= 0; next = links.follow(start)) {
      const cycle: number[] = [];
      for (let at = start; next >= 0; at = next, next = links.follow(at)) {
        const i = Math.floor(at / q.count);
        cycle.push(p.x[i] + q.x[at - i * q.count], p.y[i] + q.y[at - i * q.count]);
      }
      cycles.push(cycle);
    }
  }
  return cycles;
}
