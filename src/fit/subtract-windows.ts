import { sideOf } from '../geom/contains-point.ts';
import { type ConvexCell, middleOf, thicknessOf } from '../geom/convex-cell.ts';
import type { Box } from '../geom/point.ts';
import { type EdgeIndex, firstReaching } from './edge-index.ts';
import { FreeSpace } from './free-space.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';

/** A region no thicker than this anywhere has no area, nanometres: what is left of it is contact, decided exactly elsewhere. */
const LEAST_THICKNESS = 0.02;

/** Cells thinner than this are rounding along cuts, nanometres; thicker ones may join two parts of a region. */
const SLIVER = 2e-3;

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
 * @param within only translations in this box are looked at, where one is given.
 * @returns cells of translations in nanometres; empty where the region has no area (it may still be a contact).
 * @source own; the set itself is the inner-fit polygon of Bennell & Oliveira, EJOR 184 (2008) 397-415.
 * @check tests/outside, against two independent libraries
 */
export function subtractWindows(opening: Opening, blank: Blank, within: Box | null = null): ConvexCell[] {
  const whole = windowOf(opening, blank);
  const window = whole && within ? overlapOf(whole, within) : whole;
  if (!window || window.minX === window.maxX || window.minY === window.maxY) return [];
  const free = new FreeSpace(window);
  const coarse = { edges: blank.coarse(), index: opening.coarse() };
  if (coarse.edges !== blank.edges || coarse.index !== opening.index) subtractEdges(free, coarse.index, coarse.edges);
  subtractEdges(free, opening.index, blank.edges);
  const cells = free.cells.filter((cell) => thicknessOf(cell) > SLIVER && isInside(opening, blank, cell));
  return cells.some((cell) => thicknessOf(cell) > LEAST_THICKNESS) ? cells : [];
}

/** What two boxes share, grown by a nanometre so that a thin share stays; null where they are apart. */
function overlapOf(a: Box, b: Box): Box | null {
  const shared = {
    minX: Math.max(a.minX, b.minX - 1),
    minY: Math.max(a.minY, b.minY - 1),
    maxX: Math.min(a.maxX, b.maxX + 1),
    maxY: Math.min(a.maxY, b.maxY + 1),
  };
  return shared.minX <= shared.maxX && shared.minY <= shared.maxY ? shared : null;
}

function subtractEdges(free: FreeSpace, index: EdgeIndex, edges: Float64Array): void {
  for (let k = 0; k < edges.length && !free.isEmpty; k += 4)
    subtractBlankEdge(free, index, edges[k], edges[k + 1], edges[k + 2], edges[k + 3]);
}

/** Cuts out what one blank edge forbids together with each opening edge within its reach. */
function subtractBlankEdge(
  free: FreeSpace,
  index: EdgeIndex,
  bx0: number,
  by0: number,
  bx1: number,
  by1: number,
): void {
  const { edges, minY, reachY } = index;
  const highest = Math.max(by0, by1);
  const leftmost = Math.min(bx0, bx1);
  const rightmost = Math.max(bx0, bx1);
  const lowest = Math.min(by0, by1);
  for (
    let i = firstReaching(reachY, lowest + free.box.minY);
    i < minY.length && minY[i] < highest + free.box.maxY;
    i++
  ) {
    const k = i * 4;
    const ax0 = edges[k];
    const ay0 = edges[k + 1];
    const ax1 = edges[k + 2];
    const ay1 = edges[k + 3];
    if ((ay0 > ay1 ? ay0 : ay1) - lowest <= free.box.minY) continue;
    if ((ax0 > ax1 ? ax0 : ax1) - leftmost <= free.box.minX) continue;
    if ((ax0 < ax1 ? ax0 : ax1) - rightmost >= free.box.maxX) continue;
    free.subtract(ax0 - bx0, ay0 - by0, ax1 - ax0, ay1 - ay0, bx0 - bx1, by0 - by1);
    if (free.isEmpty) return;
  }
}

/** Whether the blank, moved into the cell (where no edges cross), stands inside the opening and round none of its holes. */
function isInside(opening: Opening, blank: Blank, cell: ConvexCell): boolean {
  const { x, y } = middleOf(cell);
  const startsInside = blank.rings.every(([p]) => sideOf(opening.boundaries, { x: p.x + x, y: p.y + y }) !== 'outside');
  if (!startsInside) return false;
  return opening.holes.every(([p]) => sideOf(blank.rings, { x: p.x - x, y: p.y - y }) === 'outside');
}
