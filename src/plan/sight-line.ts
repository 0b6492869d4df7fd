import type { GrooveSide, Milled } from '../profile/profile.ts';

/** How far the wards of a keyway reach, and how wide one can look straight through it. Lengths in nanometres. */
export interface SightLine {
  readonly id: string;
  /** How far past the upright centre line the longest ward reaches, from either side; below 0 where it stays short of it. */
  readonly left: number;
  readonly right: number;
  /** Whether some ward reaches past the centre line. */
  readonly paracentric: boolean;
  /** Width of the widest upright strip that no ward stands into, from above the rounded back to the upper edge; below 0: wards pass each other by so much. */
  readonly strip: number;
}

/**
 * Paracentric reach and line of sight of a milled keyway.
 *
 * The strip is bounded by the tip that reaches furthest in from each side, whatever their heights: a straight upright
 * strip of metal of that thickness and the keyway's height would pass.
 *
 * @check tests/unit/plan/sight-line.test.ts
 */
export function sightLine(id: string, { thickness, grooves }: Milled): SightLine {
  const reach = (side: GrooveSide) =>
    grooves.reduce((most, ward) => (ward.side === side ? Math.max(most, ward.depth) : most), 0);
  const [left, right] = [reach('left') - thickness / 2, reach('right') - thickness / 2];
  return { id, left, right, paracentric: left > 0 || right > 0, strip: -left - right };
}
