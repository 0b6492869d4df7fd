import type { ReadSolid } from './read-with-assimp.ts';

/** What a solid's surface is, counted and summed in double precision; millimetres. */
export interface SolidFacts {
  /** How often an edge is used, least and most, both ways round taken as one. */
  readonly edgeUses: readonly [number, number];
  /** Whether no edge is used twice the same way round. */
  readonly oriented: boolean;
  /** Corners less edges plus triangles. */
  readonly euler: number;
  readonly bodies: number;
  readonly degenerate: number;
  /** Positive where triangles are counter-clockwise seen from outside. */
  readonly volume: number;
  readonly count: number;
  readonly bounds: readonly [readonly number[], readonly number[]];
}

/** The corners that a file without numbers repeats for each triangle, each once. */
export function joinCorners({ corners, triangles, ...rest }: ReadSolid): ReadSolid {
  const numbers = new Map<string, number>();
  const joined: ReadSolid['corners'][number][] = [];
  const numberOf = corners.map((corner) => {
    const key = corner.join();
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, joined.length);
    return joined.push(corner) - 1;
  });
  return { ...rest, corners: joined, triangles: triangles.map(([a, b, c]) => [numberOf[a], numberOf[b], numberOf[c]]) };
}

/** @source Volume: the divergence theorem, tetrahedra from the origin to each triangle, with their signs. */
export function measureSolid({ corners, triangles }: ReadSolid): SolidFacts {
  const ways = new Map<string, number>();
  const edges = new Map<string, number>();
  for (const [a, b, c] of triangles)
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, a],
    ]) {
      count(ways, `${from},${to}`);
      count(edges, `${Math.min(from, to)},${Math.max(from, to)}`);
    }
  const uses = [...edges.values()];
  const axes = [0, 1, 2];
  return {
    edgeUses: [uses.reduce((least, n) => Math.min(least, n)), uses.reduce((most, n) => Math.max(most, n))],
    oriented: [...ways.values()].every((n) => n === 1),
    euler: new Set(triangles.flat()).size - edges.size + triangles.length,
    bodies: bodiesOf(corners.length, triangles),
    degenerate: triangles.filter((triangle) => areaVector(triangle.map((i) => corners[i])).every((part) => part === 0))
      .length,
    volume: triangles.reduce((sum, triangle) => sum + tetrahedron(triangle.map((i) => corners[i])), 0),
    count: triangles.length,
    bounds: [
      axes.map((axis) => corners.reduce((least, corner) => Math.min(least, corner[axis]), Infinity)),
      axes.map((axis) => corners.reduce((most, corner) => Math.max(most, corner[axis]), -Infinity)),
    ],
  };
}

function count(counts: Map<string, number>, key: string) {
  counts.set(key, (counts.get(key) ?? 0) + 1);
}

function areaVector([a, b, c]: readonly (readonly number[])[]): number[] {
  const [u, v] = [b, c].map((corner) => corner.map((value, axis) => value - a[axis]));
  return [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
}

function tetrahedron(triangle: readonly (readonly number[])[]): number {
  const normal = areaVector(triangle);
  return triangle[0].reduce((sum, value, axis) => sum + value * normal[axis], 0) / 6;
}

/** How many pieces hang together by their corners. */
function bodiesOf(corners: number, triangles: ReadSolid['triangles']): number {
  const parent = Array.from({ length: corners }, (_, i) => i);
  const rootOf = (start: number) => {
    let i = start;
    while (parent[i] !== i) {
      parent[i] = parent[parent[i]];
      i = parent[i];
    }
    return i;
  };
  for (const [a, b, c] of triangles) {
    parent[rootOf(b)] = rootOf(a);
    parent[rootOf(c)] = rootOf(a);
  }
  return new Set(triangles.map(([a]) => rootOf(a))).size;
}
