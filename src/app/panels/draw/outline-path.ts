import type { Point } from '../../../geom/point.ts';

const NM_PER_MM = 1e6;
const paths = new WeakMap<readonly Point[], string>();

/** The SVG path of a closed outline, in millimetres and y up; made once for each outline. */
export function outlinePath(points: readonly Point[]): string {
  const known = paths.get(points);
  if (known !== undefined) return known;
  const path = `M${points.map((p) => `${p.x / NM_PER_MM} ${p.y / NM_PER_MM}`).join('L')}Z`;
  paths.set(points, path);
  return path;
}
