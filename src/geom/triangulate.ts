import earcut from 'earcut';
import type { ConvexCell } from './convex-cell.ts';
import type { Point } from './point.ts';
import type { Patch, Region } from './region.ts';

/** Triangles, as convex cells, that together make up the region. */
export function triangulate(region: Region): ConvexCell[] {
  return region.flatMap(triangulatePatch);
}

function triangulatePatch({ outer, holes }: Patch): ConvexCell[] {
  const points: Point[] = [...outer, ...holes.flat()];
  const starts: number[] = [];
  for (let start = outer.length, k = 0; k < holes.length; start += holes[k++].length) starts.push(start);
  const corners = earcut(
    points.flatMap((p) => [p.x, p.y]),
    starts,
  );
  const cells: ConvexCell[] = [];
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [points[corners[i]], points[corners[i + 1]], points[corners[i + 2]]];
    const left = (b.x - a.x) * (c.y - a.y) > (b.y - a.y) * (c.x - a.x);
    cells.push(left ? [a.x, a.y, b.x, b.y, c.x, c.y] : [a.x, a.y, c.x, c.y, b.x, b.y]);
  }
  return cells;
}
