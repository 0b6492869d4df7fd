import type { GrooveSide, Milled } from '../profile/profile.ts';
import { type Sight, sightBetween } from '../profile/sight-line.ts';

/** How far the wards of a keyway reach, and how wide one can look straight through it, above its rounded back. */
export interface SightLine extends Sight {
  readonly id: string;
}

/**
 * Paracentric reach and line of sight of a milled keyway, before it is drawn.
 *
 * The strip is bounded by the tip that reaches furthest in from each side, whatever their heights: a straight upright
 * strip of metal of that thickness and the keyway's height would pass.
 *
 * @check tests/unit/plan/sight-line.test.ts; tests/laws/gauge.test.ts (the same as of the drawn outline)
 */
export function sightLine(id: string, { thickness, grooves }: Milled): SightLine {
  const reach = (side: GrooveSide) =>
    grooves.reduce((most, ward) => (ward.side === side ? Math.max(most, ward.depth) : most), 0);
  return { id, ...sightBetween(0, thickness, reach('left'), thickness - reach('right')) };
}
