import { convexStretches, type Stretch } from './convex-stretches.ts';
import type { Side } from './quadratic-elements.ts';
import type { SectionMesh } from './section-mesh.ts';
import type { Bounds } from './strength.ts';

/** A triangle with the stretches of outline that may be nearest to places in it. */
interface Cell {
  /** x and y of its three corners. */
  readonly at: readonly [number, number, number, number, number, number];
  readonly near: readonly Stretch[];
  /** Bounds of the integral of the distance over it. */
  readonly below: number;
  readonly above: number;
}

/** Ends of the outline's sides: x, y, x, y for each. */
type Walls = Float64Array;

/** Rounds of splitting at most. */
const MOST_ROUNDS = 40;

/** Of more planes than this, it is not looked for whether two are the least everywhere. */
const MOST_PLANES = 12;

/** Cells at most. */
const MOST_CELLS = 60_000;

/**
 * The fully plastic torque over the shear yield stress: twice the volume of the heap of sand that stands on the section,
 * whose slope is one; that is twice the integral of the distance from the outline.
 *
 * The distance from a stretch of the outline that is a convex hollow, such as a groove, or one side, is convex. So on a
 * triangle it lies above its tangent plane at the middle and below the plane through its values at the corners; the least of
 * such planes over all stretches that may be nearest is concave, so its integral is at least the mean of its corner values; of two planes it is taken exactly.
 * Triangles whose two bounds differ most are split in four until the sum is close enough.
 *
 * @accuracy rounding; the bounds enclose the truth.
 * @source A. Nadai's sand heap; A. Nadai, "Theory of Flow and Fracture of Solids", vol. 1, 1950 (from memory).
 * @check tests/outside/plastic-torque.test.ts
 */
export class SandHeap {
  private readonly inner: Roof;
  private readonly outer: Roof;

  constructor(mesh: SectionMesh, hasArcs: boolean) {
    this.inner = new Roof(mesh, 'inner');
    this.outer = hasArcs ? new Roof(mesh, 'outer') : this.inner;
  }

  /** The bounds as they are known now, mm^3. With arcs, `below` is that of the polygon inside and `above` that of the polygon outside. */
  get torque(): Bounds {
    return { below: 2 * this.inner.sums.below, above: 2 * this.outer.sums.above };
  }

  /**
   * One round of splitting; false where the bounds are as close as asked, or there is no end to it.
   *
   * @param aim distance of the bounds, as a share of the torque.
   */
  refine(aim: number): boolean {
    return this.inner.refine(aim) || (this.outer !== this.inner && this.outer.refine(aim));
  }
}

/** Bounds of the integral of the distance from one polygon over it. */
class Roof {
  sums: Bounds;
  private readonly walls: Walls;
  private cells: readonly Cell[];
  private rounds = 0;

  constructor(mesh: SectionMesh, side: Side) {
    const { walls, cells } = cellsOf(mesh, side);
    [this.walls, this.cells] = [walls, cells];
    this.sums = sumsOf(cells);
  }

  refine(aim: number): boolean {
    const { below, above } = this.sums;
    if (above - below <= aim * below || this.rounds++ >= MOST_ROUNDS || this.cells.length > MOST_CELLS) return false;
    const most = (0.8 * aim * below) / this.cells.length;
    this.cells = this.cells.flatMap((cell) => (cell.above - cell.below > most ? split(cell, this.walls) : [cell]));
    this.sums = sumsOf(this.cells);
    return true;
  }
}

function sumsOf(cells: readonly Cell[]): Bounds {
  return { below: sumOf(cells.map(({ below }) => below)), above: sumOf(cells.map(({ above }) => above)) };
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** The mesh's triangles as cells. */
function cellsOf({ points, corners, corners0 }: SectionMesh, side: Side): { walls: Walls; cells: Cell[] } {
  const at = (i: number): readonly [number, number] =>
    side === 'inner' ? [points[i].x, points[i].y] : [points[i].outerX, points[i].outerY];
  const walls = new Float64Array(4 * corners0);
  for (let i = 0; i < corners0; i++) walls.set([...at(i), ...at((i + 1) % corners0)], 4 * i);
  const near = stretchesByTile(walls, convexStretches(walls));
  const cells = Array.from({ length: corners.length / 3 }, (_, t) => {
    const [a, b, c] = [at(corners[3 * t]), at(corners[3 * t + 1]), at(corners[3 * t + 2])];
    const [mx, my] = [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3];
    const reach = Math.max(...[a, b, c].map(([x, y]) => Math.hypot(x - mx, y - my)));
    return cellOf([...a, ...b, ...c], near(mx, my, reach), walls);
  });
  return { walls, cells };
}

/** Looks up the stretches that may be nearest to places within reach of another; remembers them for whole square tiles. */
function stretchesByTile(
  walls: Walls,
  all: readonly Stretch[],
): (x: number, y: number, reach: number) => readonly Stretch[] {
  const known = new Map<string, readonly Stretch[]>();
  const extent = walls.reduce((a, b) => Math.max(a, b)) - walls.reduce((a, b) => Math.min(a, b));
  return (x, y, reach) => {
    // Tiles of the size of the reach, a power of two of the whole.
    const size = extent / 2 ** Math.floor(Math.log2(extent / reach));
    const [column, row] = [Math.floor(x / size), Math.floor(y / size)];
    const key = `${size} ${column} ${row}`;
    const near = known.get(key) ?? nearest(walls, all, (column + 0.5) * size, (row + 0.5) * size, 1.8 * size);
    known.set(key, near);
    return near;
  };
}

/** A triangle in four, by the middles of its edges. */
function split({ at, near }: Cell, walls: Walls): Cell[] {
  const [ax, ay, bx, by, cx, cy] = at;
  const [px, py, qx, qy] = [(ax + bx) / 2, (ay + by) / 2, (bx + cx) / 2, (by + cy) / 2];
  const [rx, ry] = [(cx + ax) / 2, (cy + ay) / 2];
  return [
    cellOf([ax, ay, px, py, rx, ry], near, walls),
    cellOf([px, py, bx, by, qx, qy], near, walls),
    cellOf([rx, ry, qx, qy, cx, cy], near, walls),
    cellOf([px, py, qx, qy, rx, ry], near, walls),
  ];
}

/** A cell with its bounds, given the stretches that may be nearest to places in a triangle that it lies in. */
function cellOf(at: Cell['at'], candidates: readonly Stretch[], walls: Walls): Cell {
  const [ax, ay, bx, by, cx, cy] = at;
  const [mx, my] = [(ax + bx + cx) / 3, (ay + by + cy) / 3];
  const area = ((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2;
  const reach = Math.sqrt(Math.max(square(ax - mx, ay - my), square(bx - mx, by - my), square(cx - mx, cy - my)));
  const near = nearest(walls, candidates, mx, my, reach);
  const low: Corners[] = [];
  const high: Corners[] = [];
  for (const stretch of near.flatMap((whole) => convexOver(whole, at, walls))) {
    const wall = nearestWall(walls, stretch, mx, my);
    const share = shareOn(walls, wall, mx, my);
    const k = 4 * wall;
    const ux = mx - walls[k] - share * (walls[k + 2] - walls[k]);
    const uy = my - walls[k + 1] - share * (walls[k + 3] - walls[k + 1]);
    const d = Math.sqrt(square(ux, uy));
    // The tangent plane at the middle; its slope is one, away from the nearest place of the wall.
    const [gx, gy] = d > 0 ? [ux / d, uy / d] : [0, 0];
    const tangent = (x: number, y: number) => d + gx * (x - mx) + gy * (y - my);
    low.push([tangent(ax, ay), tangent(bx, by), tangent(cx, cy)]);
    high.push([
      Math.sqrt(squareFromStretch(walls, stretch, ax, ay)),
      Math.sqrt(squareFromStretch(walls, stretch, bx, by)),
      Math.sqrt(squareFromStretch(walls, stretch, cx, cy)),
    ]);
  }
  return { at, near, below: area * Math.max(0, leastMean(low)), above: area * meanOfLeast(high) };
}

/** The stretch where the distance from it is convex over a triangle, else its walls one by one. */
function convexOver(stretch: Stretch, at: Cell['at'], walls: Walls): readonly Stretch[] {
  if (stretch.length === 1) return [stretch];
  const [first, last] = [4 * stretch[0], 4 * stretch[stretch.length - 1]];
  const [px, py] = [walls[first], walls[first + 1]];
  const [ux, uy] = [walls[last + 2] - px, walls[last + 3] - py];
  // From before the line over the hollow's mouth, the nearest place of the filled hollow is on the stretch itself.
  for (let i = 0; i < 6; i += 2)
    if (ux * (at[i + 1] - py) - uy * (at[i] - px) < 0) return stretch.map((wall) => [wall]);
  return [stretch];
}

/** Values of a plane at the corners of a triangle. */
type Corners = readonly [number, number, number];

/** At most the mean over a triangle of the least of some planes; equal to it where two of them are the least ones. */
function leastMean(planes: readonly Corners[]): number {
  const [first, second, ...more] = planes.length > MOST_PLANES ? planes : undominated(planes);
  if (more.length === 0) return second ? meanOfLesser(first, second) : mean(first);
  const least = [0, 1, 2].map((i) => planes.reduce((low, plane) => Math.min(low, plane[i]), Infinity));
  return (least[0] + least[1] + least[2]) / 3;
}

/** At least the mean over a triangle of the least of some planes; equal to it where two of them are the least ones. */
function meanOfLeast(planes: readonly Corners[]): number {
  const lowest = planes.reduce((a, b) => (mean(b) < mean(a) ? b : a));
  return planes.reduce((least, plane) => Math.min(least, meanOfLesser(lowest, plane)), mean(lowest));
}

/** The planes that no other one lies below at all three corners. */
function undominated(planes: readonly Corners[]): Corners[] {
  const isBelow = (p: Corners, q: Corners) => p[0] <= q[0] && p[1] <= q[1] && p[2] <= q[2];
  const kept: Corners[] = [];
  for (const plane of planes) {
    if (kept.some((other) => isBelow(other, plane))) continue;
    for (let k = kept.length - 1; k >= 0; k--) if (isBelow(plane, kept[k])) kept.splice(k, 1);
    kept.push(plane);
  }
  return kept;
}

function mean([a, b, c]: Corners): number {
  return (a + b + c) / 3;
}

/** The mean over a triangle of the lesser of two planes: that of the first less that of what it is above the second. */
function meanOfLesser(p: Corners, q: Corners): number {
  return mean(p) - meanAboveZero(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

/** The mean over a triangle of the positive part of a plane: a pyramid, or the plane and a pyramid less. */
function meanAboveZero(a: number, b: number, c: number): number {
  if (a <= 0 && b <= 0 && c <= 0) return 0;
  if (a >= 0 && b >= 0 && c >= 0) return (a + b + c) / 3;
  const positive = (a > 0 ? 1 : 0) + (b > 0 ? 1 : 0) + (c > 0 ? 1 : 0);
  if (positive === 2) return (a + b + c) / 3 + meanAboveZero(-a, -b, -c);
  // One corner stands out: the pyramid over it, cut off where the plane is zero on two edges.
  const [top, one, two] = [
    [a, b, c],
    [b, c, a],
    [c, a, b],
  ].find(([first]) => first > 0) ?? [a, b, c];
  return top ** 3 / (3 * (top - one) * (top - two));
}

/** The stretches that are nearest to some place within `reach` of another; perhaps a few more. */
function nearest(walls: Walls, candidates: readonly Stretch[], x: number, y: number, reach: number): Stretch[] {
  const far = candidates.map((stretch) => squareFromStretch(walls, stretch, x, y));
  const most = (Math.sqrt(far.reduce((a, b) => Math.min(a, b), Infinity)) + 2 * reach) ** 2;
  return candidates.filter((_, k) => far[k] <= most);
}

/** The wall of a stretch that is nearest to a place. */
function nearestWall(walls: Walls, stretch: Stretch, x: number, y: number): number {
  let [best, least] = [stretch[0], Infinity];
  for (const wall of stretch) {
    const far = squareFrom(walls, wall, x, y);
    if (far < least) [best, least] = [wall, far];
  }
  return best;
}

/** Square of a place's distance from a stretch. */
function squareFromStretch(walls: Walls, stretch: Stretch, x: number, y: number): number {
  let least = Infinity;
  for (const wall of stretch) least = Math.min(least, squareFrom(walls, wall, x, y));
  return least;
}

function square(x: number, y: number): number {
  return x * x + y * y;
}

/** Square of a place's distance from a wall. */
function squareFrom(walls: Walls, wall: number, x: number, y: number): number {
  const k = 4 * wall;
  const share = shareOn(walls, wall, x, y);
  return square(
    x - walls[k] - share * (walls[k + 2] - walls[k]),
    y - walls[k + 1] - share * (walls[k + 3] - walls[k + 1]),
  );
}

/** Where along a wall its place nearest to another is, from 0 to 1. */
function shareOn(walls: Walls, wall: number, x: number, y: number): number {
  const k = 4 * wall;
  const ux = walls[k + 2] - walls[k];
  const uy = walls[k + 3] - walls[k + 1];
  const along = ((x - walls[k]) * ux + (y - walls[k + 1]) * uy) / (ux * ux + uy * uy);
  return Math.min(1, Math.max(0, along));
}
