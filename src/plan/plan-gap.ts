import type { Family } from '../family/family.ts';
import { NM_PER_MM, NM_PER_UM } from '../geom/point.ts';

/** The gap that planned blades run with and the tolerance that they are made to; the family's own, nanometres. */
export interface PlanGap {
  readonly runningClearance: number;
  /** Greatest deviation of an outline as made, to either side. */
  readonly tolerance: number;
  /** The thinnest web that a blade should have, where one is set. */
  readonly leastWeb?: number;
  /** Greatest tilt of a blank in a keyway, either way, radians; upright only where absent. */
  readonly tiltLimit?: number;
}

/** The gap, the tolerance, the least web and the tilt limit that a family sets for its planned blades. */
export function planGapOf({ runningClearance, tolerance, leastWeb, tiltLimit }: Family): PlanGap {
  return { runningClearance, tolerance, tiltLimit, ...(leastWeb !== undefined && { leastWeb }) };
}

/** The web that is kept where the family sets none, nanometres: a choice of our own, no source. */
const USUAL_WEB = 0.4 * NM_PER_MM;

/** What chords that stand for arcs and rounding may take off a stop, nanometres. */
export const CHORDS = 5 * NM_PER_UM;

/** The thinnest web that is kept, nanometres. */
export function leastWebOf({ leastWeb = USUAL_WEB }: PlanGap): number {
  return leastWeb;
}

/**
 * The gap all round a blank in a keyway that is drawn for it: the running clearance and the tolerance of both parts, so
 * that the fullest blank still enters the narrowest keyway with the running clearance.
 */
export function gapAllRound({ runningClearance, tolerance }: PlanGap): number {
  return runningClearance + 2 * tolerance;
}

/**
 * By how much a ward must be deeper than a groove (or than a plain face) to stop the blade for certain.
 *
 * The tip of a ward stands one gap short of the root of its own groove, and the blade gives way by another gap: two gaps.
 * Leanest blank and widest keyway take a tolerance each off both faces, and as much off what stops the blade from giving
 * way: four tolerances.
 *
 * @returns nanometres.
 * @check tests/laws/ward-sites.test.ts: every step above it stops, by the fit core
 */
export function leastStop(gap: PlanGap): number {
  return 2 * gapAllRound(gap) + 4 * gap.tolerance + CHORDS;
}
