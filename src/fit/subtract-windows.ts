import type { ConvexCell } from '../geom/convex-cell.ts';
import { boxOfCells, cellOfBox, cutCell, middleOf, thicknessOf } from '../geom/convex-cell.ts';
import { sideOf } from '../geom/contains-point.ts';
import type { Box } from '../geom/point.ts';
import type { Blank } from './prepare-blank.ts';
import type { EdgeIndex, Opening } from './prepare-opening.ts';

/** Overlaps thinner than this are left alone, nanometres: far above the rounding of a double at 1e8, far below any part. */
const SLACK = 1e-4;

/** Free pieces thinner than this are not taken as area, nanometres: what is left of them is contact, decided exactly elsewhere. */
const LEAST_THICKNESS = 0.02;

/** A free cell with the box round it. */
interface FreeCell {
  readonly cell: ConvexCell;
  readonly box: Box;
}

/**
 * The translations for which the blank's box lies within the opening's box, or null where there is none.
 * Every placement lies in this small window, because a blank is nearly as large as its keyway.
 */
export function windowOf(opening: Opening, blank: Blank): Box | null {
  const window = {
    minX: opening.box.minX - blank.box.minX,
    minY: opening.box.minY - blank.box.minY,
    maxX: opening.box.maxX - blank.box.maxX,
    maxY: opening.box.maxY - blank.box.maxY,
  };
  return window.minX <= window.maxX && window.minY <= window.maxY ? window : null;
}

/**
 * The inner-fit region as convex cells that do not overlap: all translations t for which the blank moved by t
 * lies inside the opening, less what has no area.
 *
 * Window subtraction: an edge a of the opening and an edge b of the blank cross for exactly those t in the open
 * parallelogram a + (-b). Starting with the window, each parallelogram is cut out of the cells that are still
 * free. In what is left no edges cross, so a cell is wholly good or wholly bad; one vertex decides.
 *
 * @returns cells of translations in nanometres; empty where the region has no area (it may still be a contact).
 * @source own; the set itself is the inner-fit polygon of Bennell & Oliveira, EJOR 184 (2008) 397-415.
 * @check tests/outside, against two independent libraries
 */
export function subtractWindows(opening: Opening, blank: Blank): ConvexCell[] {
  const window = windowOf(opening, blank);
  if (!window || window.minX === window.maxX || window.minY === window.maxY) return [];
  const free = new FreeSpace(window);
  const { edges } = blank;
  for (let k = 0; k < edges.length && free.cells.length > 0; k += 4)
    subtractBlankEdge(free, opening.index, edges[k], edges[k + 1], edges[k + 2], edges[k + 3]);
  return free.cells.map(({ cell }) => cell).filter((cell) => thicknessOf(cell) > LEAST_THICKNESS && isInside(opening, blank, cell));
}

/** Cuts out what one blank edge forbids together with each opening edge within its reach. */
function subtractBlankEdge(free: FreeSpace, index: EdgeIndex, bx0: number, by0: number, bx1: number, by1: number): void {
  const { edges, minY, reachY } = index;
  const highest = Math.max(by0, by1);
  const leftmost = Math.min(bx0, bx1);
  const rightmost = Math.max(bx0, bx1);
  const lowest = Math.min(by0, by1) ;
  for (let i = firstReaching(reachY, lowest + free.box.minY); i < minY.length && minY[i] < highest + free.box.maxY; i++) {
    const k = i * 4;
    const ax0 = edges[k];
    const ay0 = edges[k + 1];
    const ax1 = edges[k + 2];
    const ay1 = edges[k + 3];
    if ((ay0 > ay1 ? ay0 : ay1) - lowest <= free.box.minY) continue;
    if ((ax0 > ax1 ? ax0 : ax1) - leftmost <= free.box.minX) continue;
    if ((ax0 < ax1 ? ax0 : ax1) - rightmost >= free.box.maxX) continue;
    free.subtract(ax0 - bx0, ay0 - by0, ax1 - ax0, ay1 - ay0, bx0 - bx1, by0 - by1);
    if (free.cells.length === 0) return;
  }
}

/** First index whose running maximum is above `y`. */
function firstReaching(reachY: Float64Array, y: number): number {
  let low = 0;
  let high = reachY.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if (reachY[mid] > y) high = mid;
    else low = mid + 1;
  }
  return low;
}

/** Whether the blank, moved into the cell (where no edges cross), stands inside the opening and round none of its holes. */
function isInside(opening: Opening, blank: Blank, cell: ConvexCell): boolean {
  const { x, y } = middleOf(cell);
  const first = blank.ring[0];
  if (sideOf(opening.boundaries, { x: first.x + x, y: first.y + y }) === 'outside') return false;
  return opening.holes.every((hole) => sideOf([blank.ring], { x: hole[0].x - x, y: hole[0].y - y }) === 'outside');
}

/** What is left of the window: convex cells that do not overlap, and the box round them all. */
class FreeSpace {
  cells: FreeCell[];
  box: Box;

  constructor(window: Box) {
    this.cells = [{ cell: cellOfBox(window), box: window }];
    this.box = window;
  }

  /** Cuts the open parallelogram p, p + u, p + u + v, p + v out of every cell. */
  subtract(px: number, py: number, ux: number, uy: number, vx: number, vy: number): void {
    const area = ux * vy - uy * vx;
    if (area === 0) return;
    if (area < 0) this.subtractTurned(px, py, vx, vy, ux, uy, -area);
    else this.subtractTurned(px, py, ux, uy, vx, vy, area);
  }

  /** {@link subtract} with u to v turning left; `area` is their cross product. */
  private subtractTurned(px: number, py: number, ux: number, uy: number, vx: number, vy: number, area: number): void {
    const minX = px + Math.min(0, ux) + Math.min(0, vx);
    const maxX = px + Math.max(0, ux) + Math.max(0, vx);
    const minY = py + Math.min(0, uy) + Math.min(0, vy);
    const maxY = py + Math.max(0, uy) + Math.max(0, vy);
    const { box } = this;
    if (maxX <= box.minX || minX >= box.maxX || maxY <= box.minY || minY >= box.maxY) return;
    const slackU = SLACK * Math.hypot(ux, uy);
    const slackV = SLACK * Math.hypot(vx, vy);
    let kept: FreeCell[] | null = null;
    for (let i = 0; i < this.cells.length; i++) {
      const entry = this.cells[i];
      const b = entry.box;
      const apart =
        maxX <= b.minX || minX >= b.maxX || maxY <= b.minY || minY >= b.maxY ||
        isOutsideSlab(entry.cell, px, py, ux, uy, area, slackU, 1) ||
        isOutsideSlab(entry.cell, px, py, vx, vy, area, slackV, -1) ||
        isBeyondCell(entry.cell, px, py, ux, uy, vx, vy);
      if (apart) kept?.push(entry);
      else {
        kept ??= this.cells.slice(0, i);
        splitOff(kept, entry.cell, px, py, ux, uy, vx, vy, area, slackU, slackV);
      }
    }
    if (!kept) return;
    this.cells = kept;
    if (kept.length > 0) this.box = boxOfCells(kept.map(({ cell }) => cell));
  }
}

/** Whether all of the cell lies on one side of the slab 0 < sign * cross(u, t - p) < area. */
function isOutsideSlab(cell: ConvexCell, px: number, py: number, ux: number, uy: number, area: number, slack: number, sign: number): boolean {
  let below = true;
  let above = true;
  for (let i = 0; i < cell.length && (below || above); i += 2) {
    const h = sign * (ux * (cell[i + 1] - py) - uy * (cell[i] - px));
    if (h > slack) below = false;
    if (h < area - slack) above = false;
  }
  return below || above;
}

/** Whether an edge of the cell has the whole parallelogram on its outer side. */
function isBeyondCell(cell: ConvexCell, px: number, py: number, ux: number, uy: number, vx: number, vy: number): boolean {
  let x0 = cell[cell.length - 2];
  let y0 = cell[cell.length - 1];
  for (let i = 0; i < cell.length; i += 2) {
    const ex = cell[i] - x0;
    const ey = cell[i + 1] - y0;
    const base = ex * (py - y0) - ey * (px - x0);
    const alongU = ex * uy - ey * ux;
    const alongV = ex * vy - ey * vx;
    const most = base + Math.max(0, alongU) + Math.max(0, alongV);
    if (most <= SLACK * (Math.abs(ex) + Math.abs(ey))) return true;
    x0 = cell[i];
    y0 = cell[i + 1];
  }
  return false;
}

/** Adds to `kept` the parts of the cell outside the parallelogram; the part inside is dropped. */
function splitOff(kept: FreeCell[], cell: ConvexCell, px: number, py: number, ux: number, uy: number, vx: number, vy: number, area: number, slackU: number, slackV: number): void {
  let rest: ConvexCell | null = cell;
  const levelU = ux * py - uy * px;
  const levelV = vy * px - vx * py;
  rest = keepBelow(kept, rest, -uy, ux, levelU, slackU);
  rest = rest && keepAbove(kept, rest, -uy, ux, levelU + area, slackU);
  rest = rest && keepBelow(kept, rest, vy, -vx, levelV, slackV);
  if (rest) keepAbove(kept, rest, vy, -vx, levelV + area, slackV);
}

function keepBelow(kept: FreeCell[], cell: ConvexCell, nx: number, ny: number, level: number, slack: number): ConvexCell | null {
  const { above, below } = cutCell(cell, nx, ny, level, slack);
  if (below) kept.push({ cell: below, box: boxOfCells([below]) });
  return above;
}

function keepAbove(kept: FreeCell[], cell: ConvexCell, nx: number, ny: number, level: number, slack: number): ConvexCell | null {
  const { above, below } = cutCell(cell, nx, ny, level, slack);
  if (above) kept.push({ cell: above, box: boxOfCells([above]) });
  return below;
}
