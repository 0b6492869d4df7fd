import { offset } from '../geom/clip.ts';
import { type Region, regionOf } from '../geom/region.ts';
import { makeRing, type Ring } from '../geom/ring.ts';
import { type Blank, prepareBlank } from './prepare-blank.ts';
import { type Opening, prepareOpening } from './prepare-opening.ts';

/** Arc tolerance of worn and toleranced outlines, nanometres. */
export const OFFSET_ARC = 40;

/**
 * The outline of a blank with `amount` taken off everywhere (put on where negative); empty where nothing is left.
 * A thin web may wear through: the parts then still move as one.
 *
 * @accuracy 42 nm: arcs are drawn with chords.
 */
export function shrinkRing(ring: Ring, amount: number): readonly Ring[] {
  if (amount === 0) return [ring];
  return offset(regionOf(ring), -amount, 'round', OFFSET_ARC).map(({ outer }) => soundRing(outer));
}

/** {@link shrinkRing} for a blank that may already be in parts. */
export function shrinkRings(rings: readonly Ring[], amount: number): readonly Ring[] {
  return rings.flatMap((ring) => shrinkRing(ring, amount));
}

/** {@link shrinkRing}, ready to be tried; null where nothing is left. */
export function shrinkBlank(ring: Ring, amount: number): Blank | null {
  const rings = shrinkRing(ring, amount);
  return rings.length > 0 ? prepareBlank(rings) : null;
}

/**
 * The opening grown by `amount` everywhere (shrunk where negative); empty where nothing is left.
 *
 * @accuracy 42 nm.
 */
export function growRegion(region: Region, amount: number): Region {
  return amount === 0 ? region : offset(region, amount, 'round', OFFSET_ARC);
}

/** {@link growRegion}, ready; null where nothing is left. */
export function growOpening(region: Region, amount: number): Opening | null {
  const grown = growRegion(region, amount);
  return grown.length > 0 ? prepareOpening(grown) : null;
}

/** What clipper-lib gives back may touch itself: then it is used as it is, which the window subtraction bears. */
function soundRing(points: Ring): Ring {
  const result = makeRing(points);
  return result.ok ? result.ring : points;
}
