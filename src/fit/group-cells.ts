import type { ConvexCell } from '../geom/convex-cell.ts';

/** Cells nearer than this touch, nanometres: wider than the slivers left out between them, far below any part. */
const TOUCH = 0.05;

/** Groups cells that touch, directly or through others: each group is one connected piece of the region. */
export function groupCells(cells: readonly ConvexCell[]): ConvexCell[][] {
  const groups: ConvexCell[][] = [];
  for (const cell of cells) {
    const touching = groups.filter((group) => group.some((other) => touch(cell, other)));
    const merged = [cell, ...touching.flat()];
    for (const group of touching) groups.splice(groups.indexOf(group), 1);
    groups.push(merged);
  }
  return groups;
}

/** Whether two convex cells touch: no edge of either has the other wholly beyond it. */
function touch(a: ConvexCell, b: ConvexCell): boolean {
  return !isBeyond(a, b) && !isBeyond(b, a);
}

function isBeyond(cell: ConvexCell, other: ConvexCell): boolean {
  let x0 = cell[cell.length - 2];
  let y0 = cell[cell.length - 1];
  for (let i = 0; i < cell.length; i += 2) {
    const ex = cell[i] - x0;
    const ey = cell[i + 1] - y0;
    const slack = TOUCH * Math.hypot(ex, ey);
    let beyond = slack > 0;
    for (let k = 0; k < other.length && beyond; k += 2)
      beyond = ex * (other[k + 1] - y0) - ey * (other[k] - x0) < -slack;
    if (beyond) return true;
    x0 = cell[i];
    y0 = cell[i + 1];
  }
  return false;
}
