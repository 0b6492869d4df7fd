import type { Point } from '../geom/point.ts';
import { boxOf } from '../geom/point.ts';
import type { Strip } from './thickness-curve.ts';

/**
 * The thickness (across) and height (up) of a tool that is a plain upright rectangle as it is drawn; null where its
 * section has another shape or leans.
 *
 * @param outline nanometres; corners in the middle of a straight side do not matter.
 * @check tests/unit/gauge/tool-table.test.ts
 */
export function straightTool(outline: readonly Point[]): Strip | null {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  const onSide = outline.every((p, i) => {
    const q = outline[(i + 1) % outline.length];
    const upright = p.x === q.x && (p.x === minX || p.x === maxX);
    const level = p.y === q.y && (p.y === minY || p.y === maxY);
    return upright || level;
  });
  return onSide ? { thickness: maxX - minX, height: maxY - minY } : null;
}
