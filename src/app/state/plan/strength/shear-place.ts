import { boxOf, NM_PER_MM } from '../../../../geom/point.ts';
import type { Profile } from '../../../../profile/profile.ts';

/** Room round the section for the marks at its edge, pixels. */
const MARGIN = 12;

/** Where a section lies in a picture: pixels from nanometres. */
export interface ShearPlace {
  /** Pixels for a nanometre. */
  readonly scale: number;
  /** Pixels for a millimetre. */
  readonly perMm: number;
  readonly x: number;
  readonly y: number;
}

/** Places a section in the middle of a picture of so many pixels, as large as it will go. */
export function shearPlace({ ring }: Profile, width: number, height: number): ShearPlace {
  const { minX, maxX, minY, maxY } = boxOf(ring);
  const room = (length: number) => Math.max(1, length - 2 * MARGIN);
  const scale = Math.min(room(width) / (maxX - minX), room(height) / (maxY - minY));
  return {
    scale,
    perMm: scale * NM_PER_MM,
    x: width / 2 - (scale * (minX + maxX)) / 2,
    y: height / 2 + (scale * (minY + maxY)) / 2,
  };
}
