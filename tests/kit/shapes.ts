import type { Point } from '../../src/geom/point.ts';
import { makeRing, type Ring } from '../../src/geom/ring.ts';

/** A ring of vertices in millimetres. @throws Error where they are not a simple polygon. */
export function ringOfMm(vertices: readonly (readonly [number, number])[]): Ring {
  return soundRing(vertices.map(([x, y]) => ({ x: x * 1e6, y: y * 1e6 })));
}

/** A ring of vertices in nanometres. @throws Error where they are not a simple polygon. */
export function soundRing(points: readonly Point[]): Ring {
  const made = makeRing(points);
  if (!made.ok) throw new Error(made.fault.message);
  return made.ring;
}

/** A rectangle with its lower left corner at the origin, millimetres. */
export function boxOfMm(width: number, height: number): Ring {
  return ringOfMm([
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ]);
}

/** The ring turned about the origin by an angle in degrees, in whole nanometres. */
export function turned(ring: Ring, degrees: number): Ring {
  const c = Math.cos((degrees * Math.PI) / 180);
  const s = Math.sin((degrees * Math.PI) / 180);
  return soundRing(ring.map(({ x, y }) => ({ x: c * x - s * y, y: s * x + c * y })));
}

/** A keyway of 2.1 x 8.5 mm with one ward on the left from 3.1 to 3.9 mm, so deep (millimetres). */
export function wardedKeyway(depth: number): Ring {
  return ringOfMm([
    [0, 0],
    [2.1, 0],
    [2.1, 8.5],
    [0, 8.5],
    [0, 3.9],
    [depth, 3.9],
    [depth, 3.1],
    [0, 3.1],
  ]);
}
