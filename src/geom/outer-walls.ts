import type { ConvexCell } from './convex-cell.ts';
import type { Walls } from './deepest-point.ts';

/** Edges nearer to each other than this, facing opposite ways, are the two sides of one cut, nanometres. */
const SAME_LINE = 0.05;

/**
 * The boundary of the union of cells that do not overlap: their edges, less the stretches along which two cells meet.
 *
 * @returns segments x0, y0, x1, y1, nanometres.
 * @check tests/unit/geom/outer-walls.test.ts
 */
export function outerWalls(cells: readonly ConvexCell[]): Walls {
  const walls: number[] = [];
  for (const cell of cells)
    for (let i = 0; i < cell.length; i += 2) {
      const k = (i + 2) % cell.length;
      pushUncovered(walls, cell[i], cell[i + 1], cell[k], cell[k + 1], cell, cells);
    }
  return Float64Array.from(walls);
}

/** Adds the parts of an edge that no edge of another cell runs back along. */
function pushUncovered(
  walls: number[],
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  own: ConvexCell,
  cells: readonly ConvexCell[],
): void {
  const length = Math.hypot(x1 - x0, y1 - y0);
  if (length === 0) return;
  const ux = (x1 - x0) / length;
  const uy = (y1 - y0) / length;
  let at = 0;
  for (const [from, to] of coveredStretches(x0, y0, ux, uy, length, own, cells)) {
    if (from > at + SAME_LINE) walls.push(x0 + at * ux, y0 + at * uy, x0 + from * ux, y0 + from * uy);
    at = Math.max(at, to);
  }
  if (length > at + SAME_LINE) walls.push(x0 + at * ux, y0 + at * uy, x1, y1);
}

/** The stretches of an edge, in order from its start, along which other cells' edges run back. */
function coveredStretches(
  x0: number,
  y0: number,
  ux: number,
  uy: number,
  length: number,
  own: ConvexCell,
  cells: readonly ConvexCell[],
): [number, number][] {
  const covered: [number, number][] = [];
  for (const cell of cells) {
    if (cell === own) continue;
    for (let i = 0; i < cell.length; i += 2) {
      const k = (i + 2) % cell.length;
      const [ax, ay, bx, by] = [cell[i] - x0, cell[i + 1] - y0, cell[k] - x0, cell[k + 1] - y0];
      if (Math.abs(ux * ay - uy * ax) > SAME_LINE || Math.abs(ux * by - uy * bx) > SAME_LINE) continue;
      const from = Math.max(0, ux * bx + uy * by);
      const to = Math.min(length, ux * ax + uy * ay);
      if (to > from) covered.push([from, to]);
    }
  }
  return covered.sort((a, b) => a[0] - b[0]);
}
