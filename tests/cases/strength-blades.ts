import { asTrustedRing, type Ring } from '../../src/geom/ring.ts';
import { millOutline } from '../../src/profile/mill-outline.ts';
import type { Milled } from '../../src/profile/profile.ts';

/** A blade of 2 x 8 mm with a groove on each side, 0.5 deep, flanks of 10 degrees; root radius in millimetres. */
export function rootedBlade(rootRadius: number): Milled {
  const groove = {
    width: 600_000,
    depth: 500_000,
    flank: (10 * Math.PI) / 180,
    rootRadius: Math.round(rootRadius * 1e6),
  };
  return {
    ...{ thickness: 2_000_000, height: 8_000_000, backRadius: 400_000 },
    grooves: [
      { side: 'left', bottom: 2_000_000, ...groove },
      { side: 'right', bottom: 4_500_000, ...groove },
    ],
  };
}

/** A blade of 2 x 8.4 mm with eight grooves, four on each side by turns. */
export function manyGrooved(rootRadius = 60_000): Milled {
  const groove = { width: 600_000, depth: 500_000, flank: (10 * Math.PI) / 180, rootRadius };
  const grooves = [0, 1, 2, 3].flatMap((i) => [
    { side: 'left' as const, bottom: 1_000_000 + 1_700_000 * i, ...groove },
    { side: 'right' as const, bottom: 1_800_000 + 1_700_000 * i, ...groove },
  ]);
  return { thickness: 2_000_000, height: 8_400_000, backRadius: 400_000, grooves };
}

/** The polygon of a blade. @throws Error where it has a fault. */
export function milledRing(milled: Milled): Ring {
  const made = millOutline(milled);
  if (!Array.isArray(made)) throw new Error('a blade with a fault');
  return asTrustedRing(made);
}
