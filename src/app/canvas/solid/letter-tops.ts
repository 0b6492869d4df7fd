import type { SolidMesh } from './solid-picture.ts';

/** Triangles of a mesh in the order body, sides of the raised letters, tops of them. */
export interface SortedTriangles {
  readonly triangles: Uint32Array;
  /** Number of the first triangle of a letter's top. */
  readonly topsFrom: number;
}

/**
 * The triangles of a mesh with the tops of its letters last. Only those have the letters' colour on the screen: sides of
 * the same dark would make two letters of each.
 *
 * @check tests/unit/app/block-pictures.test.ts
 */
export function letterTops({ positions, triangles, lettersFrom }: SolidMesh): SortedTriangles {
  const letters = triangles.subarray(3 * lettersFrom);
  const axis = raisedAlong(positions, letters);
  const at = (corner: number) => positions[3 * corner + axis];
  const top = letters.reduce((most, corner) => Math.max(most, at(corner)), Number.NEGATIVE_INFINITY);
  const [sides, tops]: [number[], number[]] = [[], []];
  for (let i = 0; i < letters.length; i += 3) {
    const corners = [...letters.subarray(i, i + 3)];
    (corners.every((corner) => at(corner) > top - LEVEL_MM) ? tops : sides).push(...corners);
  }
  const sorted = new Uint32Array(triangles.length);
  sorted.set(triangles.subarray(0, 3 * lettersFrom));
  sorted.set(sides, 3 * lettersFrom);
  sorted.set(tops, 3 * lettersFrom + sides.length);
  return { triangles: sorted, topsFrom: lettersFrom + sides.length / 3 };
}

/** Single precision leaves corners of one top so far apart at most, millimetres. */
const LEVEL_MM = 1e-3;

/** The axis along which letters stand out: they are wider and higher than they are thick. */
function raisedAlong(positions: Float32Array, corners: Uint32Array): number {
  const spans = [0, 1, 2].map((axis) => {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const corner of corners) {
      least = Math.min(least, positions[3 * corner + axis]);
      most = Math.max(most, positions[3 * corner + axis]);
    }
    return most - least;
  });
  return spans.indexOf(Math.min(...spans));
}
