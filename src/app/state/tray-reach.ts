import type { Family } from '../../family/family.ts';
import { boxOf, NM_PER_MM } from '../../geom/point.ts';

/** Half the width and half the height of the largest profile of a family, in millimetres: sets the tray's one scale. */
export function trayReach(family: Family): { x: number; y: number } {
  let x = 0.5;
  let y = 0.5;
  for (const { ring } of family.profiles) {
    const box = boxOf(ring);
    x = Math.max(x, (box.maxX - box.minX) / 2 / NM_PER_MM);
    y = Math.max(y, (box.maxY - box.minY) / 2 / NM_PER_MM);
  }
  return { x, y };
}
