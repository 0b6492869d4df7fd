import { boxOfCells, type ConvexCell, cellOfBox, cutCell } from '../geom/convex-cell.ts';
import type { Box } from '../geom/point.ts';

/** Overlaps thinner than this are left alone, nanometres: far above the rounding of a double at 1e8, far below any part. */
const SLACK = 1e-4;

/** Most looks at a cell for one pair: about a second of work, a thousand times what a real pair takes. */
const MOST_LOOKS = 30_000_000;

/** Thrown for two outlines so jagged that their fit cannot be decided in reasonable time: nothing is known of the pair. */
export class TooDetailed extends RangeError {
  constructor() {
    super('both outlines have too many corners to be judged together. Simplify one of them');
    this.name = 'TooDetailed';
  }
}

/** The open parallelogram p, p + u, p + u + v, p + v, with u to v turning left. */
interface Parallelogram {
  readonly px: number;
  readonly py: number;
  readonly ux: number;
  readonly uy: number;
  readonly vx: number;
  readonly vy: number;
  /** Cross product of u and v: positive. */
  readonly area: number;
}

/** A free cell with the box round it. */
interface FreeCell {
  readonly cell: ConvexCell;
  readonly box: Box;
}

/** What is left of a window from which open parallelograms are cut: convex cells that do not overlap. */
export class FreeSpace {
  /** The box round all cells: what lies outside it needs no look at all. */
  box: Box;
  private free: FreeCell[];
  private looks = 0;

  constructor(window: Box) {
    this.free = [{ cell: cellOfBox(window), box: window }];
    this.box = window;
  }

  get isEmpty(): boolean {
    return this.free.length === 0;
  }

  get cells(): ConvexCell[] {
    return this.free.map(({ cell }) => cell);
  }

  /** Cuts out the open parallelogram with a corner at (px, py) and sides u and v, either way round. */
  subtract(px: number, py: number, ux: number, uy: number, vx: number, vy: number): void {
    const area = ux * vy - uy * vx;
    if (area > 0) this.cutOut({ px, py, ux, uy, vx, vy, area });
    else if (area < 0) this.cutOut({ px, py, ux: vx, uy: vy, vx: ux, vy: uy, area: -area });
  }

  private cutOut(shape: Parallelogram): void {
    const box = boxOfShape(shape);
    this.looks += this.free.length;
    if (this.looks > MOST_LOOKS) throw new TooDetailed();
    let kept: FreeCell[] | null = null;
    for (let i = 0; i < this.free.length; i++) {
      const entry = this.free[i];
      if (isApart(entry, shape, box)) {
        kept?.push(entry);
        continue;
      }
      kept ??= this.free.slice(0, i);
      keepOutside(kept, entry.cell, shape);
    }
    if (!kept) return;
    this.free = kept;
    if (kept.length > 0) this.box = boxOfBoxes(kept);
  }
}

/** Whether a cell and a parallelogram share no more than a sliver: by boxes, then by the sides of either. */
function isApart({ cell, box }: FreeCell, shape: Parallelogram, around: Box): boolean {
  if (around.maxX <= box.minX || around.minX >= box.maxX || around.maxY <= box.minY || around.minY >= box.maxY)
    return true;
  const { ux, uy, vx, vy } = shape;
  return isOutsideSlab(cell, shape, ux, uy, 1) || isOutsideSlab(cell, shape, vx, vy, -1) || isBeyondCell(cell, shape);
}

/** Whether all of the cell lies on one side of the slab 0 < sign * cross(side, t - p) < area. */
function isOutsideSlab(cell: ConvexCell, { px, py, area }: Parallelogram, sx: number, sy: number, sign: number) {
  const slack = SLACK * (Math.abs(sx) + Math.abs(sy));
  let below = true;
  let above = true;
  for (let i = 0; i < cell.length && (below || above); i += 2) {
    const h = sign * (sx * (cell[i + 1] - py) - sy * (cell[i] - px));
    if (h > slack) below = false;
    if (h < area - slack) above = false;
  }
  return below || above;
}

/** Whether an edge of the cell has the whole parallelogram on its outer side. */
function isBeyondCell(cell: ConvexCell, { px, py, ux, uy, vx, vy }: Parallelogram): boolean {
  let x0 = cell[cell.length - 2];
  let y0 = cell[cell.length - 1];
  for (let i = 0; i < cell.length; i += 2) {
    const ex = cell[i] - x0;
    const ey = cell[i + 1] - y0;
    const alongU = ex * uy - ey * ux;
    const alongV = ex * vy - ey * vx;
    const most = ex * (py - y0) - ey * (px - x0) + (alongU > 0 ? alongU : 0) + (alongV > 0 ? alongV : 0);
    if (most <= SLACK * (Math.abs(ex) + Math.abs(ey))) return true;
    x0 = cell[i];
    y0 = cell[i + 1];
  }
  return false;
}

/** Adds to `kept` the parts of the cell outside each of the four sides in turn; what is left at the end is dropped. */
function keepOutside(kept: FreeCell[], cell: ConvexCell, { px, py, ux, uy, vx, vy, area }: Parallelogram): void {
  const levelU = ux * py - uy * px;
  const levelV = vy * px - vx * py;
  const slackU = SLACK * Math.hypot(ux, uy);
  const slackV = SLACK * Math.hypot(vx, vy);
  let rest: ConvexCell | null = keepBelow(kept, cell, -uy, ux, levelU, slackU);
  rest = rest && keepBelow(kept, rest, uy, -ux, -levelU - area, slackU);
  rest = rest && keepBelow(kept, rest, vy, -vx, levelV, slackV);
  if (rest) keepBelow(kept, rest, -vy, vx, -levelV - area, slackV);
}

/** Keeps the part of the cell below the line and gives back the part above it. */
function keepBelow(kept: FreeCell[], cell: ConvexCell, nx: number, ny: number, level: number, slack: number) {
  const { above, below } = cutCell(cell, nx, ny, level, slack);
  if (below) kept.push({ cell: below, box: boxOfCells([below]) });
  return above;
}

function boxOfShape({ px, py, ux, uy, vx, vy }: Parallelogram): Box {
  return {
    minX: px + (ux < 0 ? ux : 0) + (vx < 0 ? vx : 0),
    maxX: px + (ux > 0 ? ux : 0) + (vx > 0 ? vx : 0),
    minY: py + (uy < 0 ? uy : 0) + (vy < 0 ? vy : 0),
    maxY: py + (uy > 0 ? uy : 0) + (vy > 0 ? vy : 0),
  };
}

function boxOfBoxes(entries: readonly FreeCell[]): Box {
  let { minX, minY, maxX, maxY } = entries[0].box;
  for (let i = 1; i < entries.length; i++) {
    const { box } = entries[i];
    if (box.minX < minX) minX = box.minX;
    if (box.minY < minY) minY = box.minY;
    if (box.maxX > maxX) maxX = box.maxX;
    if (box.maxY > maxY) maxY = box.maxY;
  }
  return { minX, minY, maxX, maxY };
}
