import type { Side } from './quadratic-elements.ts';
import type { SectionMesh } from './section-mesh.ts';
import type { Bounds } from './strength.ts';

/** A triangle with the walls that may be nearest to places in it. */
interface Cell {
  /** x and y of its three corners. */
  readonly at: readonly [number, number, number, number, number, number];
  readonly area: number;
  /** Numbers of walls. */
  readonly walls: readonly number[];
  /** Bounds of the integral of the distance over it. */
  readonly below: number;
  readonly above: number;
}

/** Ends of the outline's sides: x, y, x, y for each. */
type Walls = Float64Array;

/** Rounds of splitting at most. */
const MOST_ROUNDS = 40;

/** Cells at most. */
const MOST_CELLS = 60_000;

/**
 * The fully plastic torque over the shear yield stress: twice the volume of the heap of sand that stands on the section,
 * whose slope is one; that is twice the integral of the distance from the outline.
 *
 * The distance from one side of the outline is convex. So on a triangle it lies above its tangent plane at the middle and
 * below the plane through its values at the corners; the least of such planes over all sides that may be nearest is
 * concave, so its integral is at least the mean of its corner values, and at most its value at the middle, times the area.
 * Triangles whose two bounds differ most are split in four until the sum is close enough.
 *
 * @param aim distance of the bounds, as a share of the torque.
 * @returns mm^3. With arcs, `below` is that of the polygon inside and `above` that of the polygon outside.
 * @accuracy rounding; the bounds enclose the truth.
 * @source A. Nadai's sand heap; A. Nadai, "Theory of Flow and Fracture of Solids", vol. 1, 1950 (from memory).
 * @check tests/outside/plastic-torque.test.ts
 */
export function plasticTorque(mesh: SectionMesh, hasArcs: boolean, aim = 1e-3): Bounds {
  const inner = roofVolume(mesh, 'inner', aim);
  const outer = hasArcs ? roofVolume(mesh, 'outer', aim) : inner;
  return { below: 2 * inner.below, above: 2 * outer.above };
}

/** Bounds of the integral of the distance from the outline over the section. */
function roofVolume(mesh: SectionMesh, side: Side, aim: number): Bounds {
  const { walls, cells: first } = cellsOf(mesh, side);
  let cells = first;
  for (let round = 0; ; round++) {
    const sums = { below: sumOf(cells.map(({ below }) => below)), above: sumOf(cells.map(({ above }) => above)) };
    const gap = sums.above - sums.below;
    if (gap <= aim * sums.below || round >= MOST_ROUNDS || cells.length > MOST_CELLS) return sums;
    const most = Math.max((0.5 * aim * sums.below) / cells.length, 0);
    cells = cells.flatMap((cell) => (cell.above - cell.below > most ? split(cell, walls) : [cell]));
  }
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
  const all = Array.from({ length: corners0 }, (_, i) => i);
  const cells = Array.from({ length: corners.length / 3 }, (_, t) => {
    const [a, b, c] = [at(corners[3 * t]), at(corners[3 * t + 1]), at(corners[3 * t + 2])];
    return cellOf([...a, ...b, ...c], all, walls);
  });
  return { walls, cells };
}

/** A triangle in four, by the middles of its edges. */
function split({ at, walls: near }: Cell, walls: Walls): Cell[] {
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

/** A cell with its bounds, given the walls that may be nearest to places in a triangle that it lies in. */
function cellOf(at: Cell['at'], candidates: readonly number[], walls: Walls): Cell {
  const [ax, ay, bx, by, cx, cy] = at;
  const [mx, my] = [(ax + bx + cx) / 3, (ay + by + cy) / 3];
  const area = ((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2;
  const reach = Math.sqrt(Math.max(square(ax - mx, ay - my), square(bx - mx, by - my), square(cx - mx, cy - my)));
  const far = candidates.map((wall) => Math.sqrt(squareFrom(walls, wall, mx, my)));
  const least = far.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const near = candidates.filter((_, k) => far[k] <= least + 2 * reach);
  const [low, high] = [
    [Infinity, Infinity, Infinity],
    [Infinity, Infinity],
  ];
  for (const wall of near) {
    const d = Math.sqrt(squareFrom(walls, wall, mx, my));
    // The tangent plane at the middle; its slope is one, away from the nearest place of the wall.
    const [nx, ny] = nearestOn(walls, wall, mx, my);
    const [gx, gy] = d > 0 ? [(mx - nx) / d, (my - ny) / d] : [0, 0];
    let sum = 0;
    for (let i = 0; i < 3; i++) {
      low[i] = Math.min(low[i], d + gx * (at[2 * i] - mx) + gy * (at[2 * i + 1] - my));
      sum += Math.sqrt(squareFrom(walls, wall, at[2 * i], at[2 * i + 1]));
    }
    high[0] = Math.min(high[0], sum / 3);
  }
  const below = area * Math.max(0, (low[0] + low[1] + low[2]) / 3);
  return { at, area, walls: near, below, above: area * high[0] };
}

function square(x: number, y: number): number {
  return x * x + y * y;
}

/** Square of a place's distance from a wall. */
function squareFrom(walls: Walls, wall: number, x: number, y: number): number {
  const [nx, ny] = nearestOn(walls, wall, x, y);
  return square(x - nx, y - ny);
}

/** The nearest place of a wall. */
function nearestOn(walls: Walls, wall: number, x: number, y: number): [number, number] {
  const k = 4 * wall;
  const [ax, ay] = [walls[k], walls[k + 1]];
  const [ux, uy] = [walls[k + 2] - ax, walls[k + 3] - ay];
  const along = ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy);
  const share = Math.min(1, Math.max(0, along));
  return [ax + share * ux, ay + share * uy];
}
