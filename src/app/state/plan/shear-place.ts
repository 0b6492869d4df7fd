import { boxOf, NM_PER_MM } from '../../../geom/point.ts';
import type { Profile } from '../../../profile/profile.ts';

/** Room round the section for what is written beside it, pixels. */
const MARGIN = 26;
/** Room at the right for the words at the peak. */
const BESIDE = 74;

/** Where a section lies in a picture: pixels from nanometres. */
export interface ShearPlace {
  /** Pixels for a nanometre. */
  readonly scale: number;
  /** Pixels for a millimetre. */
  readonly perMm: number;
  readonly x: number;
  readonly y: number;
}

/** Places a section in a picture of so many pixels, as large as it will go. */
export function shearPlace({ ring }: Profile, width: number, height: number): ShearPlace {
  const { minX, maxX, minY, maxY } = boxOf(ring);
  const scale = Math.min((width - MARGIN - BESIDE) / (maxX - minX), (height - 2 * MARGIN) / (maxY - minY));
  const left = (width - BESIDE + MARGIN) / 2;
  return {
    scale,
    perMm: scale * NM_PER_MM,
    x: left - (scale * (minX + maxX)) / 2,
    y: height / 2 + (scale * (minY + maxY)) / 2,
  };
}
