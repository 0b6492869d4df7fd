import type { SolidPart } from '../../print3d/display-set.ts';

const HEADER = 80;
const FACET = 50;

/** A reader takes a file that begins with "solid" for text. */
const HEADER_TEXT = 'Binary STL in millimetres';

/**
 * A part as the bytes of a binary STL file; its box begins at 0, 0, 0. The format knows no units: the numbers are
 * millimetres, as printers' programs take them.
 *
 * @source 3D Systems, Stereolithography Interface Specification, 1989, by second hand.
 * @check tests/outside/print3d.test.ts reads it with an independent library
 */
export function writeStl({ positions, triangles }: Pick<SolidPart, 'positions' | 'triangles'>): Uint8Array {
  const count = triangles.length / 3;
  const bytes = new Uint8Array(HEADER + 4 + FACET * count);
  bytes.set(Uint8Array.from(HEADER_TEXT, (letter) => letter.charCodeAt(0)));
  const view = new DataView(bytes.buffer);
  view.setUint32(HEADER, count, true);
  for (let i = 0; i < count; i++) {
    const corners = [0, 1, 2].map((k) => positions.subarray(3 * triangles[3 * i + k], 3 * triangles[3 * i + k] + 3));
    const numbers = [normalOf(corners), ...corners].flatMap((vector) => [...vector]);
    for (const [k, value] of numbers.entries()) view.setFloat32(HEADER + 4 + FACET * i + 4 * k, value, true);
  }
  return bytes;
}

/** Of length 1, outwards; zeros for a triangle without area. */
function normalOf([a, b, c]: readonly Float32Array[]): number[] {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const normal = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.hypot(...normal) || 1;
  return normal.map((part) => part / length);
}
