import { expect, test } from 'vitest';
import { isClosed, sizeOf, volumeOf } from '../../../src/print3d/measure-surface.ts';

/** A corner cut off a cube of side 2: a tetrahedron of 8 / 6. */
const POSITIONS = Float32Array.from([0, 0, 0, 2, 0, 0, 0, 2, 0, 0, 0, 2]);
const TRIANGLES = [0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3];

const surface = (triangles: readonly number[], positions = POSITIONS) => ({
  positions,
  triangles: Uint32Array.from(triangles),
});

test('a tetrahedron has a sixth of its box', () => {
  expect(volumeOf(surface(TRIANGLES))).toBeCloseTo(8 / 6, 12);
  expect(sizeOf(surface(TRIANGLES))).toEqual([2, 2, 2]);
  expect(isClosed(surface(TRIANGLES))).toBe(true);
});

test('a missing triangle, one turned round, one twice and one without area are seen', () => {
  expect(isClosed(surface(TRIANGLES.slice(3)))).toBe(false);
  expect(isClosed(surface([0, 1, 2, ...TRIANGLES.slice(3)]))).toBe(false);
  expect(isClosed(surface([...TRIANGLES, 0, 2, 1]))).toBe(false);
  expect(isClosed(surface([...TRIANGLES, 1, 1, 2]))).toBe(false);
  expect(isClosed(surface([]))).toBe(false);
});

test('corners at one place count as one, as a reader of STL takes them', () => {
  const apart = TRIANGLES.flatMap((corner) => [...POSITIONS.subarray(3 * corner, 3 * corner + 3)]);
  expect(
    isClosed(
      surface(
        TRIANGLES.map((_, i) => i),
        Float32Array.from(apart),
      ),
    ),
  ).toBe(true);
  // Two solids that share an edge: it belongs to four triangles.
  const mirrored = POSITIONS.map((value, i) => (i % 3 === 0 ? -value : value));
  const both = Float32Array.from([...POSITIONS, ...mirrored]);
  const turned = TRIANGLES.flatMap((_, i) =>
    i % 3 === 0 ? [TRIANGLES[i] + 4, TRIANGLES[i + 2] + 4, TRIANGLES[i + 1] + 4] : [],
  );
  expect(isClosed(surface([...TRIANGLES, ...turned], both))).toBe(false);
});
