// Torsion by linear triangles of three nodes, the textbook way (O. C. Zienkiewicz, "The Finite Element Method", from memory):
// what elements of second degree are compared with.

import type { SectionMesh } from '../../../src/strength/section-mesh.ts';
import { dot, type SparseMatrix, solveByGradients, times } from '../../../src/strength/sparse-matrix.ts';

/** Bounds of the torsion constant, mm^4, by linear triangles on both polygons of a mesh. */
export function linearBounds(mesh: SectionMesh): { below: number; above: number } {
  const size = mesh.points.length;
  const fixed = new Set(mesh.pieces.flatMap(({ a, b }) => [a, b]));
  const inner = solved(mesh, size, fixed, false);
  const outer = solved(mesh, size, new Set(), true);
  return { below: inner.energy, above: outer.polar - outer.energy };
}

/** The energy of the stress function with a fixed outline, or of the warping function with a free one. */
function solved(mesh: SectionMesh, size: number, fixed: ReadonlySet<number>, warping: boolean) {
  const rows = Array.from({ length: size }, () => new Map<number, number>());
  const load = new Float64Array(size);
  let polar = 0;
  for (let t = 0; t < mesh.corners.length; t += 3) {
    const at = [0, 1, 2].map((i) => mesh.corners[t + i]);
    const p = at.map((i) => mesh.points[i]).map((q) => (warping ? { x: q.outerX, y: q.outerY } : { x: q.x, y: q.y }));
    const twice = (p[1].x - p[0].x) * (p[2].y - p[0].y) - (p[2].x - p[0].x) * (p[1].y - p[0].y);
    const gx = [p[1].y - p[2].y, p[2].y - p[0].y, p[0].y - p[1].y].map((d) => d / twice);
    const gy = [p[2].x - p[1].x, p[0].x - p[2].x, p[1].x - p[0].x].map((d) => d / twice);
    const [mx, my] = [(p[0].x + p[1].x + p[2].x) / 3, (p[0].y + p[1].y + p[2].y) / 3];
    for (let i = 0; i < 3; i++) {
      const [a, b] = [p[i], p[(i + 1) % 3]];
      polar += ((((a.x + b.x) / 2) ** 2 + ((a.y + b.y) / 2) ** 2) * twice) / 6;
      load[at[i]] += warping ? ((gx[i] * my - gy[i] * mx) * twice) / 2 : twice / 3;
      for (let j = 0; j < 3; j++) {
        const value = ((gx[i] * gx[j] + gy[i] * gy[j]) * twice) / 2;
        rows[at[i]].set(at[j], (rows[at[i]].get(at[j]) ?? 0) + value);
      }
    }
  }
  const free = rows.map((_, i) => i).filter((i) => !fixed.has(i));
  const matrix = packed(rows, free);
  const b = Float64Array.from(free, (i) => load[i]);
  const { x } = solveByGradients(matrix, b, 1e-5);
  const product = new Float64Array(free.length);
  times(matrix, x, product);
  return { polar, energy: 2 * dot(b, x) - dot(x, product) };
}

function packed(rows: readonly ReadonlyMap<number, number>[], free: readonly number[]): SparseMatrix {
  const numbers = new Map(free.map((node, row) => [node, row]));
  const [starts, columns, values]: [number[], number[], number[]] = [[0], [], []];
  for (const node of free) {
    const entries = [...rows[node]].flatMap(([other, value]) => {
      const column = numbers.get(other);
      return column === undefined ? [] : [[column, value] as const];
    });
    for (const [column, value] of entries.sort(([p], [q]) => p - q)) {
      columns.push(column);
      values.push(value);
    }
    starts.push(columns.length);
  }
  return {
    size: free.length,
    starts: Int32Array.from(starts),
    columns: Int32Array.from(columns),
    values: Float64Array.from(values),
    diagonal: Float64Array.from(free, (node) => rows[node].get(node) ?? 0),
  };
}
