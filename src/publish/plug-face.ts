import type { Profile } from '../profile/profile.ts';
import type { Spot, Stroke } from './page.ts';
import { sizeOfRing } from './section-picture.ts';

/** The end of a plug: a disk with a flat at either side, millimetres of the part. One size serves the whole family. */
export interface PlugFace {
  readonly radius: number;
  /** Half the distance between the flats. */
  readonly half: number;
}

/** The plug face that goes round the largest of some keyways with metal to spare. */
export function plugFaceFor(openings: readonly Profile[]): PlugFace {
  const sizes = openings.map(({ ring }) => sizeOfRing(ring));
  const halfWidth = Math.max(0.5, ...sizes.map(({ width }) => width / 2));
  const halfHeight = Math.max(0.5, ...sizes.map(({ height }) => height / 2));
  const radius = Math.hypot(halfWidth, halfHeight) * 1.16;
  return { radius, half: Math.min(radius, Math.max(halfWidth * 1.6, radius * 0.62)) };
}

/** Chords of each of the two arcs. */
const CHORDS = 40;

/** The boundary of a plug face round a spot. */
export function plugFaceStroke({ radius, half }: PlugFace, [x, y]: Spot, scale: number): Stroke {
  const turn = Math.asin(Math.min(1, half / radius));
  const arc = (middle: number): Spot[] =>
    Array.from({ length: CHORDS + 1 }, (_, i): Spot => {
      const angle = middle - turn + (2 * turn * i) / CHORDS;
      return [x + radius * scale * Math.sin(angle), y - radius * scale * Math.cos(angle)];
    });
  return { closed: true, spots: [...arc(0), ...arc(Math.PI)] };
}
