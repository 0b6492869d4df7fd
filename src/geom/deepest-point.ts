import { type ConvexCell, cutCell, middleOf } from './convex-cell.ts';
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

interface Task {
  readonly cell: ConvexCell;
  readonly near: readonly number[];
  readonly bound: number;
  readonly x: number;
  readonly y: number;
  readonly cutX: number;
  readonly cutY: number;
}

/**
 * The point of the union of `cells` whose distance from the nearest of `walls` is greatest.
 *
 * Branch and bound. The distance from one segment is a convex function, so over a convex cell it is greatest
 * at a vertex; the least of these maxima over the walls bounds what the cell can hold. That bound is exact
 * along a thin or slot-like cell, where a bound by the cell's radius would need thousands of cells. A cell is
 * cut across the direction of the wall nearest to its middle: the bound is at most the farthest vertex from
 * that wall, so it falls with the cell's extent in that direction.
 *
 * @param cells convex, within the set that is searched.
 * @param walls at least one segment.
 * @param accuracy the search ends when `bound - depth` is at most this, nanometres.
 * @param known a depth already reached elsewhere: cells that cannot beat it are skipped.
 * @returns the point with `depth` <= greatest distance <= `bound`; null where no cell beats `known`.
 * @source branch and bound as in Garcia-Castellanos & Lombardo 2007 (poles of inaccessibility), with our own bound.
 * @check tests/unit/geom/deepest-point.test.ts
 */
export function deepestPoint(cells: readonly ConvexCell[], walls: Walls, accuracy: number, known = -1): Deepest | null {
  const every = Array.from({ length: walls.length / 4 }, (_, i) => i);
  const search = new Search(walls, accuracy, known);
  for (const cell of cells) search.consider(cell, every, Infinity);
  return search.run();
}

/** The state of one branch-and-bound search. */
class Search {
  private best: { x: number; y: number; depth: number } | null = null;
  private depth: number;
  private readonly open: Task[] = [];
  private readonly walls: Walls;
  private readonly accuracy: number;
  private squares = new Float64Array(64);

  constructor(walls: Walls, accuracy: number, known: number) {
    this.walls = walls;
    this.accuracy = accuracy;
    this.depth = known;
  }

  run(): Deepest | null {
    for (let count = 0; this.open.length > 0 && count < MOST_CELLS; count++) {
      const task = popGreatest(this.open);
      if (task.bound <= this.depth + this.accuracy) return this.result(task.bound);
      const level = task.cutX * task.x + task.cutY * task.y;
      const { above, below } = cutCell(task.cell, task.cutX, task.cutY, level, 0);
      if (above) this.consider(above, task.near, task.bound);
      if (below) this.consider(below, task.near, task.bound);
    }
    return this.result(this.open.length > 0 ? this.open[0].bound : this.depth);
  }

  /** Measures a cell: improves the best point by its middle, and keeps the cell where it may hold a better one. */
  consider(cell: ConvexCell, near: readonly number[], parentBound: number): void {
    const { x, y } = middleOf(cell);
    const { nearest, bound, wall } = this.measure(cell, near, x, y);
    if (nearest > this.depth) {
      this.depth = nearest;
      this.best = { x, y, depth: nearest };
    }
    const ceiling = Math.min(bound, parentBound);
    if (ceiling <= this.depth) return;
    const radius = radiusOf(cell, x, y);
    const reach = (ceiling + radius) ** 2;
    const kept = near.filter((_, k) => this.squares[k] <= reach);
    const { cutX, cutY } = this.cutOf(cell, x, y, wall);
    pushTask(this.open, { cell, near: kept, bound: ceiling, x, y, cutX, cutY });
  }

  /** Distance of the middle from the nearest wall, and the least over the walls of the greatest distance of a vertex. */
  private measure(cell: ConvexCell, near: readonly number[], x: number, y: number) {
    const w = this.walls;
    if (this.squares.length < near.length) this.squares = new Float64Array(near.length * 2);
    let nearest = Infinity;
    let bound = Infinity;
    let wall = -1;
    for (let k = 0; k < near.length; k++) {
      const i = near[k] * 4;
      const square = squaredDistance(x, y, w[i], w[i + 1], w[i + 2], w[i + 3]);
      this.squares[k] = square;
      if (square < nearest) {
        nearest = square;
        wall = near[k];
      }
      if (square >= bound) continue;
      let most = 0;
      for (let v = 0; v < cell.length && most < bound; v += 2) {
        const far = squaredDistance(cell[v], cell[v + 1], w[i], w[i + 1], w[i + 2], w[i + 3]);
        if (far > most) most = far;
      }
      if (most < bound) bound = most;
    }
    return { nearest: Math.sqrt(nearest), bound: Math.sqrt(bound), wall };
  }

  /** Direction across which to cut: away from the nearest wall, or along the cell's longest reach where that gains little. */
  private cutOf(cell: ConvexCell, x: number, y: number, wall: number) {
    const i = wall * 4;
    const w = this.walls;
    const at = nearestTo(x, y, w[i], w[i + 1], w[i + 2], w[i + 3]);
    const [nx, ny] = [x - at.x, y - at.y];
    const length = Math.hypot(nx, ny);
    let extent = 0;
    let far = 0;
    let [farX, farY] = [1, 0];
    for (let v = 0; v < cell.length; v += 2) {
      const dx = cell[v] - x;
      const dy = cell[v + 1] - y;
      extent = Math.max(extent, Math.abs(dx * nx + dy * ny));
      const square = dx * dx + dy * dy;
      if (square > far) [far, farX, farY] = [square, dx, dy];
    }
    const useWall = length > 0 && extent > 0.05 * length * Math.sqrt(far);
    return useWall ? { cutX: nx, cutY: ny } : { cutX: farX, cutY: farY };
  }

  private result(bound: number): Deepest | null {
    return this.best && { ...this.best, bound: Math.max(bound, this.depth) };
  }
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
