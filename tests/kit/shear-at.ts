import type { ShearField } from '../../src/strength/strength.ts';

/** The shear of a field at a place in millimetres, between the corners of the triangle that it lies in; NaN outside. */
export function shearAt({ points, triangles, shear }: ShearField, xMm: number, yMm: number): number {
  const [x, y] = [xMm * 1e6, yMm * 1e6];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]];
    const [ax, ay] = [points[2 * a], points[2 * a + 1]];
    const [ux, uy] = [points[2 * b] - ax, points[2 * b + 1] - ay];
    const [vx, vy] = [points[2 * c] - ax, points[2 * c + 1] - ay];
    const twice = ux * vy - uy * vx;
    const p = ((x - ax) * vy - (y - ay) * vx) / twice;
    const q = (ux * (y - ay) - uy * (x - ax)) / twice;
    if (p < -1e-6 || q < -1e-6 || p + q > 1 + 1e-6) continue;
    return shear[a] + p * (shear[b] - shear[a]) + q * (shear[c] - shear[a]);
  }
  return Number.NaN;
}
