import type { SolidMesh } from './solid-picture.ts';

/**
 * Edges that are none of the raised letters: those have a colour of their own, and at the size of a screen their edges
 * would run into one blot.
 *
 * @param edges six numbers an edge.
 * @check tests/unit/app/block-pictures.test.ts
 */
export function withoutLetters(
  edges: ArrayLike<number>,
  { positions, triangles, lettersFrom }: SolidMesh,
): Float32Array {
  const key = (of: ArrayLike<number>, at: number) => `${of[at]} ${of[at + 1]} ${of[at + 2]}`;
  const corners = new Set<string>();
  for (const corner of new Set(triangles.subarray(3 * lettersFrom))) corners.add(key(positions, 3 * corner));
  const kept: number[] = [];
  for (let i = 0; i < edges.length; i += 6) {
    if (corners.has(key(edges, i)) && corners.has(key(edges, i + 3))) continue;
    for (let k = 0; k < 6; k++) kept.push(edges[i + k]);
  }
  return new Float32Array(kept);
}
