import type { Profile } from '../profile/profile.ts';
import { type OutlineSight, sightOf } from '../profile/sight-line.ts';
import { heldHeights } from './gauge-answer.ts';
import { type Pinch, pinchOnCurve } from './pinch.ts';
import { type ThicknessCurve, tallestOf, thicknessAt } from './thickness-curve.ts';
import { rankTightness } from './tightness.ts';

/** What one opening says to a height; lengths in nanometres. */
export interface OpeningReport {
  readonly opening: Profile;
  readonly curve: ThicknessCurve;
  /** The thickest strip of the height; 0 where none goes in. */
  readonly thickest: number;
  readonly tallest: number;
  /** By that thickness, 1 for the tightest. */
  readonly rank: number;
  /** Null where nothing so tall goes in. */
  readonly pinch: Pinch | null;
  /** Heights above the lowest point of the keyway at which it is held, left and right. */
  readonly heights: readonly [number, number] | null;
  readonly sight: OutlineSight;
}

/**
 * What each opening that has a curve says to a height, the tightest first.
 *
 * @check tests/unit/cli/run-gauge.test.ts
 */
export function openingReports(
  openings: readonly Profile[],
  curves: readonly ThicknessCurve[],
  height: number,
): OpeningReport[] {
  return rankTightness(curves, { by: 'height', height }).flatMap(({ openingId, rank }) => {
    const opening = openings.find(({ id }) => id === openingId);
    const curve = curves.find((one) => one.openingId === openingId);
    if (!opening || !curve) return [];
    const pinch = pinchOnCurve(curve, opening.ring, height);
    return [
      {
        opening,
        curve,
        thickest: thicknessAt(curve, height),
        tallest: tallestOf(curve),
        rank,
        pinch,
        heights: pinch && heldHeights(pinch, opening.ring),
        sight: sightOf(opening.ring),
      },
    ];
  });
}
