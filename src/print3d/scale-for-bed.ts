import type { Family } from '../family/family.ts';
import { planDisplay } from './build-display-set.ts';
import { isOverBed } from './check-prints.ts';
import { type DisplaySetup, SETTING_RANGES } from './display-setup.ts';
import { RAISED } from './raise-letters.ts';

/**
 * The largest scale below the one that is set at which every part goes on the bed, in tenths.
 *
 * @param setup without faults.
 * @returns null where no smaller scale does: walls and letters do not shrink with it.
 * @check tests/unit/print3d/scale-for-bed.test.ts
 */
export function scaleForBed(family: Family, setup: DisplaySetup): number | null {
  for (let tenths = Math.ceil(setup.scale * 10) - 1; tenths >= SETTING_RANGES.scale.least * 10; tenths--) {
    const scale = tenths / 10;
    if (goesOnBed(family, { ...setup, scale })) return scale;
  }
  return null;
}

function goesOnBed(family: Family, setup: DisplaySetup): boolean {
  const { tiles, coupons, board } = planDisplay(family, setup);
  // The name stands out at the side of a grip.
  const raised = setup.letters ? RAISED.out : 0;
  const grips = coupons.map(({ grip: { width, depth } }) => ({ width: width + raised, depth }));
  return [...tiles, ...grips, ...board].every(({ width, depth }) => !isOverBed([width, depth], setup.bed));
}
