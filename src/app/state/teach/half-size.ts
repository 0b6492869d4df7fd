import { boxOf, NM_PER_MM } from '../../../geom/point.ts';
import type { Profile } from '../../../profile/profile.ts';

/** Half the width and half the height of one profile, in millimetres. */
export function halfSizeOf({ ring }: Profile): { x: number; y: number } {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  return { x: (maxX - minX) / 2 / NM_PER_MM, y: (maxY - minY) / 2 / NM_PER_MM };
}
