import { type Box, boxOf, NM_PER_MM } from '../geom/point.ts';
import type { Profile } from '../profile/profile.ts';

/**
 * The end of a plug as it is drawn in pictures and on pages: a disk with a flat at either side, so that plugs
 * stand closely in the block, in millimetres. One size serves the whole family, so that sizes compare.
 */
export interface PlugFace {
  readonly radius: number;
  /** Half the distance between the flats. */
  readonly half: number;
}

/** The plug face that goes round the largest of `openings` with metal to spare. */
export function plugFace(openings: readonly Profile[]): PlugFace {
  let halfWidth = 0.5;
  let halfHeight = 0.5;
  for (const opening of openings) {
    const box = boxOf(opening.ring);
    halfWidth = Math.max(halfWidth, (box.maxX - box.minX) / 2 / NM_PER_MM);
    halfHeight = Math.max(halfHeight, (box.maxY - box.minY) / 2 / NM_PER_MM);
  }
  const radius = Math.hypot(halfWidth, halfHeight) * 1.16;
  return { radius, half: Math.min(radius, Math.max(halfWidth * 1.6, radius * 0.62)) };
}

/** The SVG path of a plug face round the origin, in millimetres. */
export function plugFacePath({ radius, half }: PlugFace): string {
  const end = Math.sqrt(Math.max(0, radius * radius - half * half));
  return `M${-half} ${-end}A${radius} ${radius} 0 0 1 ${half} ${-end}L${half} ${end}A${radius} ${radius} 0 0 1 ${-half} ${end}Z`;
}

/** Middle of an opening's upright box, in millimetres: what a plug face is centred on. */
export function middleOf(opening: Profile): { x: number; y: number } {
  const box: Box = boxOf(opening.ring);
  return { x: (box.minX + box.maxX) / 2 / NM_PER_MM, y: (box.minY + box.maxY) / 2 / NM_PER_MM };
}

/** The upright box of the plug face round an opening, in nanometres. */
export function plugBox(opening: Profile, { radius, half }: PlugFace): Box {
  const { x, y } = middleOf(opening);
  return {
    minX: (x - half) * NM_PER_MM,
    maxX: (x + half) * NM_PER_MM,
    minY: (y - radius) * NM_PER_MM,
    maxY: (y + radius) * NM_PER_MM,
  };
}
