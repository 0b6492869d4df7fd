import { boxOf, type Point } from '../geom/point.ts';

/**
 * A point well inside an outline, to lead a line to: half way up, in the middle of the widest stretch there.
 * The middle of the box will not do, since it may lie in a hollow of the outline.
 */
export function pointInside(outline: readonly Point[]): Point {
  const box = boxOf(outline);
  // Off the exact middle by a part that no drawn vertex lies on, so that the level cuts edges and not corners.
  const y = box.minY + (box.maxY - box.minY) * 0.50017;
  const cuts = outline
    .flatMap((a, i) => {
      const b = outline[(i + 1) % outline.length];
      return a.y > y === b.y > y ? [] : [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)];
    })
    .sort((a, b) => a - b);
  let best = { x: (box.minX + box.maxX) / 2, y, wide: -1 };
  for (let i = 0; i + 1 < cuts.length; i += 2) {
    const wide = cuts[i + 1] - cuts[i];
    if (wide > best.wide) best = { x: (cuts[i] + cuts[i + 1]) / 2, y, wide };
  }
  return { x: best.x, y };
}
