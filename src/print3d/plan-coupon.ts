import type { Profile } from '../profile/profile.ts';
import type { DisplaySetup } from './display-setup.ts';
import type { Footprint } from './pack-shelves.ts';
import { printedBox } from './section-loops.ts';

/** How deep a slot of the board is, millimetres; what stands in it shows its letters above. */
export const SLOT_DEPTH = 5;

/** A grip is at least so wide and deep, so that a thin strip can be held and stands by itself. */
const LEAST_GRIP = 8;

/** A grip reaches over its blade by at most so much: it stops at the front of the block. */
const MOST_OVER = 2;

/** How far a blade looks out of the back of the block, its tip not counted. */
const LOOKS_OUT = 2;

/** Sizes of a coupon, millimetres. */
export interface CouponPlan {
  readonly profile: Profile;
  readonly grip: Footprint;
  readonly gripLength: number;
  readonly bladeLength: number;
  /** Where the origin of the section's drawing lies on the grip. */
  readonly origin: readonly [number, number];
  /** How much the tip takes off the back, the top and the full section's length: it slants at 45 degrees. */
  readonly tip: { readonly taken: number };
}

/**
 * Sizes of the coupon of a blank or tool: its blade reaches through the block, its grip is larger than its section.
 *
 * @check tests/unit/print3d/plan-coupon.test.ts
 */
export function planCoupon(profile: Profile, setup: DisplaySetup): CouponPlan {
  const { minX, minY, maxX, maxY } = printedBox(profile.ring, setup.scale);
  const over = Math.min(MOST_OVER, Math.max(0, (setup.wall - 1) / 2));
  const grip = {
    width: Math.max(LEAST_GRIP, maxX - minX + 2 * over),
    depth: Math.max(LEAST_GRIP, maxY - minY + 2 * over),
  };
  const tip = tipOf(setup, maxY - minY);
  return {
    profile,
    grip,
    gripLength: SLOT_DEPTH + (setup.letters ? setup.letterSize * 1.4 : 7) + 1,
    bladeLength: setup.blockDepth + LOOKS_OUT + tip.taken,
    // Up on the section is down on the bed.
    origin: [grip.width / 2 - (minX + maxX) / 2, grip.depth / 2 + (minY + maxY) / 2],
    tip,
  };
}

function tipOf({ tip }: DisplaySetup, height: number): CouponPlan['tip'] {
  if (tip === 'flat') return { taken: 0 };
  const taken = tip === 'chamfered' ? Math.min(3, height / 6) : height / 2 - Math.min(1, height / 8);
  return { taken };
}
