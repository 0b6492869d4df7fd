import { climb } from './climb.ts';
import { areaOf, type ConvexCell, type CutCell, cellHolds, cutCell, middleOf } from './convex-cell.ts';
import { squaredDistance } from './segment-distance.ts';

/** Segments as a flat list x0, y0, x1, y1 a segment, nanometres. */
export type Walls = Float64Array;

/** A point far from every wall. */
export interface Deepest {
  readonly x: number;
  readonly y: number;
  /** Distance of the point from the nearest wall: a lower bound of the greatest distance, nanometres. */
  readonly depth: number;
  /** Upper bound of the greatest distance, nanometres. */
  readonly bound: number;
}

/** Most cells looked at before the search gives back what it has, with its honest bound. */
const MOST_CELLS = 20_000;

/** A cut that takes off less than this share of a cell is no progress. */
const LEAST_SHARE = 0.2;

/** A cell that may still hold a deeper point. */
interface Task {
  readonly cell: ConvexCell;
  /** Numbers of the walls that can be nearest somewhere in the cell. */
  readonly near: readonly number[];
  /** No point of the cell is deeper than this. */
  readonly bound: number;
}

/**
 * The point of the union of `cells` whose distance from the nearest of `walls` is greatest.
 *
 * Branch and bound. The distance from one segment is a convex function, so over a convex cell it is greatest
 * at a vertex; the least of these maxima over the walls bounds what the cell can hold. A step climbs from the
 * middle of the cell to a point as far as possible from the walls around it, and then cuts the cell along the
 * line as far from the nearest wall as the best point is: what is on the wall's side is done with at once.
 *
 * @param cells convex, within the set that is searched.
 * @param walls at least one segment.
 * @param accuracy the search ends when `bound - depth` is at most this, nanometres.
 * @returns the point with `depth` <= greatest distance <= `bound`; null where there is no cell.
 * @source branch and bound as in Garcia-Castellanos & Lombardo 2007 (poles of inaccessibility), with our own bound.
 * @check tests/unit/geom/deepest-point.test.ts
 */
export function deepestPoint(cells: readonly ConvexCell[], walls: Walls, accuracy: number): Deepest | null {
  const every = Array.from({ length: walls.length / 4 }, (_, i) => i);
  const search = new Search(walls, accuracy);
  for (const cell of cells) search.consider(cell, every, Infinity);
  return search.run();
}

/** Distance of a point from the nearest wall, nanometres. */
export function depthAt(walls: Walls, x: number, y: number): number {
  let least = Infinity;
  for (let i = 0; i < walls.length; i += 4)
    least = Math.min(least, squaredDistance(x, y, walls[i], walls[i + 1], walls[i + 2], walls[i + 3]));
  return Math.sqrt(least);
}

/** The state of one branch-and-bound search. */
class Search {
  private best = { x: Number.NaN, y: Number.NaN };
  private depth = -1;
  /** Greatest bound of a cell that was left aside because it was not enough above the best point. */
  private leftAside = 0;
  private readonly open: Task[] = [];
  private readonly walls: Walls;
  private readonly accuracy: number;
  private squares = new Float64Array(64);

  constructor(walls: Walls, accuracy: number) {
    this.walls = walls;
    this.accuracy = accuracy;
  }

  run(): Deepest | null {
    for (let count = 0; this.open.length > 0 && count < MOST_CELLS; count++) {
      const task = popGreatest(this.open);
      if (task.bound <= this.depth + this.accuracy) return this.result(task.bound);
      this.split(task);
    }
    return this.result(this.open.length > 0 ? this.open[0].bound : this.depth);
  }

  /** Measures a cell: improves the best point from within it, and keeps the cell where it may hold a better one. */
  consider(cell: ConvexCell, near: readonly number[], parentBound: number): void {
    const { x, y } = middleOf(cell);
    const nearest = this.measure(near, x, y);
    this.offer(x, y, nearest.distance);
    const bound = Math.min(parentBound, this.boundOf(cell, near, nearest.slot));
    if (this.isDone(bound)) return;
    const kept = this.within(near, bound + radiusOf(cell, x, y));
    const top = climb(this.walls, kept, x, y);
    if (top && cellHolds(cell, top.x, top.y)) this.offer(top.x, top.y, this.measure(kept, top.x, top.y).distance);
    if (!this.isDone(bound)) pushTask(this.open, { cell, near: kept, bound });
  }

  private offer(x: number, y: number, depth: number): void {
    if (depth <= this.depth) return;
    this.depth = depth;
    this.best = { x, y };
  }

  private isDone(bound: number): boolean {
    if (bound > this.depth + this.accuracy) return false;
    if (bound > this.leftAside) this.leftAside = bound;
    return true;
  }

  /** Distances of a point from the walls in `near`, squared, into `squares`; the nearest one. */
  private measure(near: readonly number[], x: number, y: number): { distance: number; slot: number } {
    const w = this.walls;
    if (this.squares.length < near.length) this.squares = new Float64Array(near.length * 2);
    let least = Infinity;
    let slot = -1;
    for (let k = 0; k < near.length; k++) {
      const i = near[k] * 4;
      const square = squaredDistance(x, y, w[i], w[i + 1], w[i + 2], w[i + 3]);
      this.squares[k] = square;
      if (square < least) {
        least = square;
        slot = k;
      }
    }
    return { distance: Math.sqrt(least), slot };
  }

  /** The least, over the walls, of the greatest distance of a vertex: the nearest wall first, since it mostly decides. */
  private boundOf(cell: ConvexCell, near: readonly number[], first: number): number {
    let bound = this.farthestVertex(cell, near[first], Infinity);
    for (let k = 0; k < near.length; k++)
      if (this.squares[k] < bound) bound = Math.min(bound, this.farthestVertex(cell, near[k], bound));
    return Math.sqrt(bound);
  }

  /** Greatest squared distance of a vertex from a wall; stops early above `enough`. */
  private farthestVertex(cell: ConvexCell, wall: number, enough: number): number {
    const w = this.walls;
    const i = wall * 4;
    let most = 0;
    for (let v = 0; v < cell.length && most < enough; v += 2) {
      const far = squaredDistance(cell[v], cell[v + 1], w[i], w[i + 1], w[i + 2], w[i + 3]);
      if (far > most) most = far;
    }
    return most;
  }

  /** Those of the walls measured last that are no further than `reach`. */
  private within(near: readonly number[], reach: number): number[] {
    const kept: number[] = [];
    const limit = reach * reach;
    for (let k = 0; k < near.length; k++) if (this.squares[k] <= limit) kept.push(near[k]);
    return kept;
  }

  /** Cuts a cell where the best depth from its nearest wall ends, or across its length where that would not get on. */
  private split({ cell, near, bound }: Task): void {
    const { x, y } = middleOf(cell);
    const { slot, distance } = this.measure(near, x, y);
    const parts = this.cutAtDepth(cell, near[slot], x, y, distance) ?? cutAcross(cell, x, y);
    if (parts.above) this.consider(parts.above, near, bound);
    if (parts.below) this.consider(parts.below, near, bound);
  }

  /**
   * The cell cut along the line as far from the wall as the best point; null where that leaves a part on the wall's
   * side that is not done with (the wall is short, and its ends are further off) and the other part hardly smaller.
   */
  private cutAtDepth(cell: ConvexCell, wall: number, x: number, y: number, distance: number): CutCell | null {
    if (distance === 0) return null;
    const w = this.walls;
    const i = wall * 4;
    const at = nearestTo(x, y, w[i], w[i + 1], w[i + 2], w[i + 3]);
    const nx = (x - at.x) / distance;
    const ny = (y - at.y) / distance;
    const parts = cutCell(cell, nx, ny, nx * at.x + ny * at.y + this.depth + this.accuracy / 2, 0);
    if (!parts.above || !parts.below) return null;
    const done = (this.depth + this.accuracy) ** 2;
    if (this.farthestVertex(parts.below, wall, done) < done) return parts;
    return areaOf(parts.above) > LEAST_SHARE * areaOf(cell) ? parts : null;
  }

  private result(bound: number): Deepest | null {
    if (this.depth < 0) return null;
    return { ...this.best, depth: this.depth, bound: Math.max(bound, this.leftAside, this.depth) };
  }
}

/** Cuts a cell through (x, y) across the direction of its farthest vertex. */
function cutAcross(cell: ConvexCell, x: number, y: number) {
  let [far, nx, ny] = [0, 1, 0];
  for (let v = 0; v < cell.length; v += 2) {
    const dx = cell[v] - x;
    const dy = cell[v + 1] - y;
    if (dx * dx + dy * dy > far) [far, nx, ny] = [dx * dx + dy * dy, dx, dy];
  }
  return cutCell(cell, nx, ny, nx * x + ny * y, 0);
}

function nearestTo(x: number, y: number, ax: number, ay: number, bx: number, by: number) {
  const ux = bx - ax;
  const uy = by - ay;
  const square = ux * ux + uy * uy;
  const f = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / square));
  return { x: ax + f * ux, y: ay + f * uy };
}

function radiusOf(cell: ConvexCell, x: number, y: number): number {
  let most = 0;
  for (let v = 0; v < cell.length; v += 2) most = Math.max(most, (cell[v] - x) ** 2 + (cell[v + 1] - y) ** 2);
  return Math.sqrt(most);
}

/** Puts a task into the heap, the greatest bound at the front. */
function pushTask(heap: Task[], task: Task): void {
  let i = heap.push(task) - 1;
  while (i > 0) {
    const parent = (i - 1) >> 1;
    if (heap[parent].bound >= task.bound) break;
    heap[i] = heap[parent];
    i = parent;
  }
  heap[i] = task;
}

/** Takes the task with the greatest bound out of the heap. */
function popGreatest(heap: Task[]): Task {
  const top = heap[0];
  const last = heap.pop() as Task;
  if (heap.length === 0) return top;
  let i = 0;
  for (;;) {
    let child = 2 * i + 1;
    if (child >= heap.length) break;
    if (child + 1 < heap.length && heap[child + 1].bound > heap[child].bound) child++;
    if (heap[child].bound <= last.bound) break;
    heap[i] = heap[child];
    i = child;
  }
  heap[i] = last;
  return top;
}
