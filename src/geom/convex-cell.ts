import type { Box, Point } from './point.ts';

/** A convex polygon as a flat list x0, y0, x1, y1, ..., counter-clockwise, nanometres (fractions allowed). */
export type ConvexCell = readonly number[];

/** The two parts of a cut cell; null where nothing lies on that side. */
export interface CutCell {
  readonly above: ConvexCell | null;
  readonly below: ConvexCell | null;
}

/**
 * Cuts a cell by the line nx * x + ny * y = level. Vertices within `slack` of the line (in the scale of the
 * normal) count as on it, so that no part thinner than that is made.
 */
export function cutCell(cell: ConvexCell, nx: number, ny: number, level: number, slack: number): CutCell {
  const above: number[] = [];
  const below: number[] = [];
  let x0 = cell[cell.length - 2];
  let y0 = cell[cell.length - 1];
  let h0 = nx * x0 + ny * y0 - level;
  let highest = -Infinity;
  let lowest = Infinity;
  for (let i = 0; i < cell.length; i += 2) {
    const x = cell[i];
    const y = cell[i + 1];
    const h = nx * x + ny * y - level;
    if ((h0 > slack && h < -slack) || (h0 < -slack && h > slack)) {
      const f = h0 / (h0 - h);
      const cx = x0 + f * (x - x0);
      const cy = y0 + f * (y - y0);
      above.push(cx, cy);
      below.push(cx, cy);
    }
    if (h >= -slack) above.push(x, y);
    if (h <= slack) below.push(x, y);
    if (h > highest) highest = h;
    if (h < lowest) lowest = h;
    x0 = x;
    y0 = y;
    h0 = h;
  }
  return {
    above: highest > slack && above.length >= 6 ? above : null,
    below: lowest < -slack && below.length >= 6 ? below : null,
  };
}

/** The upright rectangle as a cell. */
export function cellOfBox(box: Box): ConvexCell {
  return [box.minX, box.minY, box.maxX, box.minY, box.maxX, box.maxY, box.minX, box.maxY];
}

/** The smallest upright rectangle round some cells; `cells` must not be empty. */
export function boxOfCells(cells: readonly ConvexCell[]): Box {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const cell of cells) {
    for (let i = 0; i < cell.length; i += 2) {
      minX = Math.min(minX, cell[i]);
      maxX = Math.max(maxX, cell[i]);
      minY = Math.min(minY, cell[i + 1]);
      maxY = Math.max(maxY, cell[i + 1]);
    }
  }
  return { minX, minY, maxX, maxY };
}

/** Area of a cell, square nanometres. */
export function areaOf(cell: ConvexCell): number {
  let twice = 0;
  for (let i = 2; i + 3 < cell.length; i += 2)
    twice += (cell[i] - cell[0]) * (cell[i + 3] - cell[1]) - (cell[i + 2] - cell[0]) * (cell[i + 1] - cell[1]);
  return twice / 2;
}

/** Area over half the perimeter: about the thickness of a thin cell. Nanometres. */
export function thicknessOf(cell: ConvexCell): number {
  let twice = 0;
  let perimeter = 0;
  let px = cell[cell.length - 2] - cell[0];
  let py = cell[cell.length - 1] - cell[1];
  for (let i = 0; i < cell.length; i += 2) {
    const x = cell[i] - cell[0];
    const y = cell[i + 1] - cell[1];
    twice += px * y - x * py;
    perimeter += Math.hypot(x - px, y - py);
    px = x;
    py = y;
  }
  return perimeter === 0 ? 0 : twice / perimeter;
}

/** Mean of the vertices: a point inside the cell. */
export function middleOf(cell: ConvexCell): { x: number; y: number } {
  let x = 0;
  let y = 0;
  for (let i = 0; i < cell.length; i += 2) {
    x += cell[i];
    y += cell[i + 1];
  }
  const n = cell.length / 2;
  return { x: x / n, y: y / n };
}

/** The vertices of a cell as points. */
export function verticesOf(cell: ConvexCell): Point[] {
  const vertices: Point[] = [];
  for (let i = 0; i < cell.length; i += 2) vertices.push({ x: cell[i], y: cell[i + 1] });
  return vertices;
}

/** Whether (x, y) lies in the cell; a point up to 0.001 nm outside counts. */
export function cellHolds(cell: ConvexCell, x: number, y: number): boolean {
  let x0 = cell[cell.length - 2];
  let y0 = cell[cell.length - 1];
  for (let i = 0; i < cell.length; i += 2) {
    const ex = cell[i] - x0;
    const ey = cell[i + 1] - y0;
    if (ex * (y - y0) - ey * (x - x0) < -1e-3 * (Math.abs(ex) + Math.abs(ey))) return false;
    x0 = cell[i];
    y0 = cell[i + 1];
  }
  return true;
}

/** Centre of area of some cells that do not overlap; `cells` must have area. */
export function centroidOf(cells: readonly ConvexCell[]): Point {
  const [ox, oy] = cells[0];
  let [area, x, y] = [0, 0, 0];
  for (const cell of cells)
    for (let i = 2; i + 3 < cell.length; i += 2) {
      const part = (cell[i] - cell[0]) * (cell[i + 3] - cell[1]) - (cell[i + 2] - cell[0]) * (cell[i + 1] - cell[1]);
      area += part;
      x += (part * (cell[0] + cell[i] + cell[i + 2] - 3 * ox)) / 3;
      y += (part * (cell[1] + cell[i + 1] + cell[i + 3] - 3 * oy)) / 3;
    }
  return { x: ox + x / area, y: oy + y / area };
}
