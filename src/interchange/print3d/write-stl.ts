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
    const at = HEADER + 4 + FACET * i;
    const corners = [0, 1, 2].map((k) => 3 * triangles[3 * i + k]);
    const normal = normalOf(positions, corners);
    for (let k = 0; k < 3; k++) {
      view.setFloat32(at + 4 * k, normal[k], true);
      for (let axis = 0; axis < 3; axis++)
        view.setFloat32(at + 12 * (k + 1) + 4 * axis, positions[corners[k] + axis], true);
    }
  }
  return bytes;
}

/** Of length 1, outwards; zeros for a triangle without area. */
function normalOf(p: Float32Array, [a, b, c]: readonly number[]): readonly [number, number, number] {
  const [ux, uy, uz] = [p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]];
  const [vx, vy, vz] = [p[c] - p[a], p[c + 1] - p[a + 1], p[c + 2] - p[a + 2]];
  const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.hypot(x, y, z) || 1;
  return [x / length, y / length, z / length];
}
