import type { Place } from './display-set.ts';
import type { Surface } from './solids.ts';

type Triangles = Pick<Surface, 'positions' | 'triangles'>;

/**
 * The volume inside a closed surface, cubic millimetres; positive where its triangles run counter-clockwise seen from
 * outside.
 *
 * @source divergence theorem, as a sum of tetrahedra.
 * @check tests/unit/print3d/measure-surface.test.ts
 */
export function volumeOf({ positions: p, triangles }: Triangles): number {
  let six = 0;
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [triangles[i] * 3, triangles[i + 1] * 3, triangles[i + 2] * 3];
    six +=
      p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]) +
      p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2]) +
      p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c]);
  }
  return six / 6;
}

/** The far corner of a surface whose box begins at 0, 0, 0. */
export function sizeOf({ positions }: Triangles): Place {
  const most = [0, 0, 0];
  for (let i = 0; i < positions.length; i++) most[i % 3] = Math.max(most[i % 3], positions[i]);
  return [most[0], most[1], most[2]];
}

/**
 * Whether each edge belongs to exactly two triangles that run along it in opposite ways, corners at the same place taken
 * as one: what a file without corner numbers, such as STL, is read as.
 *
 * @check tests/unit/print3d/measure-surface.test.ts
 */
export function isClosed({ positions, triangles }: Triangles): boolean {
  const corner = cornersByPlace(positions);
  const count = positions.length / 3;
  const edges = new Set<number>();
  for (let i = 0; i < triangles.length; i += 3) {
    for (let k = 0; k < 3; k++) {
      const [a, b] = [corner[triangles[i + k]], corner[triangles[i + ((k + 1) % 3)]]];
      const edge = a * count + b;
      if (a === b || edges.has(edge)) return false;
      edges.add(edge);
    }
  }
  for (const edge of edges) if (!edges.has((edge % count) * count + Math.floor(edge / count))) return false;
  return edges.size > 0;
}

/** For each corner the number of the first one at the same place. */
function cornersByPlace(positions: Float32Array): Uint32Array {
  const first = new Map<string, number>();
  return Uint32Array.from({ length: positions.length / 3 }, (_, i) => {
    // Adding 0 makes one zero of both.
    const place = `${positions[3 * i] + 0},${positions[3 * i + 1] + 0},${positions[3 * i + 2] + 0}`;
    const known = first.get(place);
    if (known !== undefined) return known;
    first.set(place, i);
    return i;
  });
}
