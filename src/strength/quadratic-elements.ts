import type { SectionMesh } from './section-mesh.ts';
import type { SparseMatrix } from './sparse-matrix.ts';

/**
 * Triangles of six nodes: three corners, then the middles of the edges from corner 0 to 1, 1 to 2, 2 to 0. A function on
 * them is of second degree in each triangle and continuous across edges.
 */
export interface QuadraticMesh {
  /** Number of nodes; the mesh's points come first, in their order. */
  readonly size: number;
  /** Six numbers of nodes a triangle. */
  readonly nodes: Int32Array;
  /** Of each node, whether it lies on the outline. */
  readonly onOutline: Uint8Array;
}

/** Which of the two polygons the triangles fill. */
export type Side = 'inner' | 'outer';

/** What integrals over a triangle need: twice its area and the gradients of its three linear functions. */
export interface TriangleShape {
  readonly twice: number;
  /** Gradients: x of corners 0 to 2, then y. */
  readonly gx: readonly [number, number, number];
  readonly gy: readonly [number, number, number];
}

/** The middles of a triangle's edges in corner shares: a rule on them is exact for second degree. */
export const MIDDLES = [
  [0.5, 0.5, 0],
  [0, 0.5, 0.5],
  [0.5, 0, 0.5],
] as const;

/** The nodes of a mesh for functions of second degree. */
export function quadraticMesh({ points, corners, beyond }: SectionMesh): QuadraticMesh {
  const count = corners.length / 3;
  const nodes = new Int32Array(6 * count);
  const middles = new Map<number, number>();
  const wall: number[] = [];
  let size = points.length;
  for (let t = 0; t < count; t++)
    for (let i = 0; i < 3; i++) {
      const [a, b] = [corners[3 * t + i], corners[3 * t + ((i + 1) % 3)]];
      const key = Math.min(a, b) * points.length + Math.max(a, b);
      const middle = middles.get(key) ?? size++;
      middles.set(key, middle);
      nodes[6 * t + i] = a;
      nodes[6 * t + 3 + i] = middle;
      if (beyond[3 * t + i] < 0) wall.push(a, b, middle);
    }
  const onOutline = new Uint8Array(size);
  for (const node of wall) onOutline[node] = 1;
  return { size, nodes, onOutline };
}

/** The shape of one triangle of the mesh, on either polygon. */
export function triangleShape({ points, corners }: SectionMesh, t: number, side: Side): TriangleShape {
  const [a, b, c] = [0, 1, 2].map((i) => {
    const p = points[corners[3 * t + i]];
    return side === 'inner' ? { x: p.x, y: p.y } : { x: p.outerX, y: p.outerY };
  });
  const twice = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
  return {
    twice,
    gx: [(b.y - c.y) / twice, (c.y - a.y) / twice, (a.y - b.y) / twice],
    gy: [(c.x - b.x) / twice, (a.x - c.x) / twice, (b.x - a.x) / twice],
  };
}

/**
 * The factors of the six functions' gradients at a place: function f has the gradient sum over corners c of
 * factor[f][c] times the gradient of the linear function of c.
 *
 * @param share the place in corner shares.
 */
export function gradientFactors(share: readonly [number, number, number]): readonly (readonly number[])[] {
  const [l0, l1, l2] = share;
  return [
    [4 * l0 - 1, 0, 0],
    [0, 4 * l1 - 1, 0],
    [0, 0, 4 * l2 - 1],
    [4 * l1, 4 * l0, 0],
    [0, 4 * l2, 4 * l1],
    [4 * l2, 0, 4 * l0],
  ];
}

/** The factors at the three middles, made once. */
export const AT_MIDDLES = MIDDLES.map((share) => gradientFactors(share));

/** The gradient of a function on a triangle at a place that the factors belong to. */
export function gradientOf(
  values: ArrayLike<number>,
  nodes: Int32Array,
  t: number,
  { gx, gy }: TriangleShape,
  factors: readonly (readonly number[])[],
): readonly [number, number] {
  let [f0, f1, f2] = [0, 0, 0];
  for (let f = 0; f < 6; f++) {
    const value = values[nodes[6 * t + f]];
    f0 += value * factors[f][0];
    f1 += value * factors[f][1];
    f2 += value * factors[f][2];
  }
  return [f0 * gx[0] + f1 * gx[1] + f2 * gx[2], f0 * gy[0] + f1 * gy[1] + f2 * gy[2]];
}

/**
 * Of each two of the six functions, what the products of the linear functions' gradients count: for corners c and d,
 * at 9 times (6 times the first function + the second one) + 3 c + d.
 */
const PRODUCTS = Float64Array.from({ length: 324 }, (_, k) => {
  const [pair, c, d] = [Math.floor(k / 9), Math.floor((k % 9) / 3), k % 3];
  return AT_MIDDLES.reduce((sum, factors) => sum + factors[Math.floor(pair / 6)][c] * factors[pair % 6][d], 0) / 6;
});

/** The integrals of products of the six functions' gradients over a triangle, row by row. */
export function stiffness({ twice, gx, gy }: TriangleShape): Float64Array {
  const dots = new Float64Array(9);
  for (let c = 0; c < 3; c++) for (let d = 0; d < 3; d++) dots[3 * c + d] = (gx[c] * gx[d] + gy[c] * gy[d]) * twice;
  const block = new Float64Array(36);
  for (let i = 0; i < 6; i++)
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let k = 0, at = 9 * (6 * i + j); k < 9; k++) sum += PRODUCTS[at + k] * dots[k];
      block[6 * i + j] = sum;
      block[6 * j + i] = sum;
    }
  return block;
}

/**
 * The sum of the triangles' stiffness on one polygon, for some of the nodes.
 *
 * @param numbers of each node its row, or -1 where it has none.
 */
export function assemble(
  mesh: SectionMesh,
  { nodes, size }: QuadraticMesh,
  side: Side,
  numbers: Int32Array,
  rows: number,
): SparseMatrix {
  const blocks = blocksOf(mesh, nodes.length / 6, side);
  const { starts: owned, list: owners } = trianglesOfNodes(nodes, size);
  const nodeOf = new Int32Array(rows);
  for (let node = 0; node < size; node++) if (numbers[node] >= 0) nodeOf[numbers[node]] = node;
  const [starts, diagonal] = [new Int32Array(rows + 1), new Float64Array(rows)];
  const columns = new Int32Array(6 * owners.length);
  const values = new Float64Array(6 * owners.length);
  // Where a column of the row at hand stands.
  const places = new Int32Array(rows).fill(-1);
  let end = 0;
  for (let row = 0; row < rows; row++) {
    const start = end;
    for (let k = owned[nodeOf[row]]; k < owned[nodeOf[row] + 1]; k++) {
      const place = owners[k];
      const first = place - (place % 6);
      for (let j = 0; j < 6; j++) {
        const column = numbers[nodes[first + j]];
        if (column < 0) continue;
        if (places[column] < start) {
          places[column] = end;
          columns[end++] = column;
        }
        values[places[column]] += blocks[6 * place + j];
      }
    }
    diagonal[row] = values[places[row]];
    sortRow(columns, values, start, end);
    starts[row + 1] = end;
  }
  return { size: rows, starts, columns: columns.slice(0, end), values: values.slice(0, end), diagonal };
}

/** The stiffness of all triangles, one after the other. */
function blocksOf(mesh: SectionMesh, count: number, side: Side): Float64Array {
  const blocks = new Float64Array(36 * count);
  for (let t = 0; t < count; t++) blocks.set(stiffness(triangleShape(mesh, t, side)), 36 * t);
  return blocks;
}

/** Sorts the entries of a row by column; rows are short. */
function sortRow(columns: Int32Array, values: Float64Array, start: number, end: number): void {
  for (let i = start + 1; i < end; i++) {
    const [column, value] = [columns[i], values[i]];
    let k = i - 1;
    for (; k >= start && columns[k] > column; k--) {
      columns[k + 1] = columns[k];
      values[k + 1] = values[k];
    }
    columns[k + 1] = column;
    values[k + 1] = value;
  }
}

/** For each node, the places in `nodes` where it stands. */
function trianglesOfNodes(nodes: Int32Array, size: number): { starts: Int32Array; list: Int32Array } {
  const starts = new Int32Array(size + 1);
  for (const node of nodes) starts[node + 1]++;
  for (let i = 0; i < size; i++) starts[i + 1] += starts[i];
  const next = starts.slice();
  const list = new Int32Array(nodes.length);
  nodes.forEach((node, place) => {
    list[next[node]++] = place;
  });
  return { starts, list };
}
