import { offset } from '../geom/clip.ts';
import { type Box, boxOf, type Point } from '../geom/point.ts';
import { boundariesOf, isRegion, type Region, regionOf } from '../geom/region.ts';
import type { Ring } from '../geom/ring.ts';
import { cornersOf, type EdgeIndex, indexEdges } from './edge-index.ts';

/** By how much {@link Opening.grown} is larger, nanometres: enough to turn a contact into an area well above rounding. */
export const GROWTH = 60;

/** Most grown copies that an opening keeps: those of the first steps, which every blank shares. */
const MOST_GROWN = 64;

/** A keyway made ready for many blanks. Coordinates in nanometres. */
export interface Opening {
  readonly region: Region;
  readonly boundaries: readonly (readonly Point[])[];
  readonly holes: readonly (readonly Point[])[];
  readonly box: Box;
  readonly index: EdgeIndex;
  /** Corners where the plug sticks into the keyway (tips of wards), as {@link cornersOf} lists them. */
  reflex(): Float64Array;
  /** The same opening grown by {@link GROWTH} with mitred corners, made when first needed: contains every true offset by it. */
  grown(): Opening;
  /** The opening grown by `distance` with round corners: within the true offset, short of it by at most `arcTolerance` + 2 nm. */
  roundGrown(distance: number, arcTolerance: number): Opening;
}

/** Makes an opening ready; about 0.1 ms for 60 vertices. */
export function prepareOpening(source: Ring | Region): Opening {
  const region = isRegion(source) ? source : regionOf(source);
  const boundaries = boundariesOf(region);
  let grown: Opening | null = null;
  let tips: Float64Array | null = null;
  const rounds = new Map<string, Opening>();
  return {
    region,
    boundaries,
    holes: region.flatMap((patch) => patch.holes),
    box: boxOf(boundaries.flat()),
    index: indexEdges(boundaries),
    reflex: () => (tips ??= cornersOf(boundaries, -1)),
    grown: () => (grown ??= prepareOpening(offset(region, GROWTH, 'mitre'))),
    roundGrown: (distance, arcTolerance) => {
      const key = `${distance} ${arcTolerance}`;
      const known = rounds.get(key);
      if (known) return known;
      const made = prepareOpening(offset(region, distance, 'round', arcTolerance));
      if (rounds.size < MOST_GROWN) rounds.set(key, made);
      return made;
    },
  };
}
