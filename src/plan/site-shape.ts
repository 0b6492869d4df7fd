import type { BladeLimits } from '../family/plan.ts';
import { NM_PER_MM } from '../geom/point.ts';
import type { Groove } from '../profile/profile.ts';
import { gapAllRound, type PlanGap } from './plan-gap.ts';

/** The least land on a face, nanometres, in the worst case of tolerance: a choice of our own, no source. */
const LEAST_LAND = 0.1 * NM_PER_MM;

/** The least width of a ward at its tip, nanometres, in the worst case of tolerance: a choice of our own, no source. */
const LEAST_TIP = 0.05 * NM_PER_MM;

/** A groove of the blade at a place and depth. */
export function grooveAt(blade: BladeLimits, { side, bottom }: Pick<Groove, 'side' | 'bottom'>, depth: number): Groove {
  const { grooveWidth: width, flank, rootRadius } = blade;
  return { side, bottom, width, depth, flank, rootRadius };
}

/** The land that has to stay between two grooves of a face, and at either end, nanometres. */
export function leastLand({ tolerance }: PlanGap): number {
  return LEAST_LAND + 2 * tolerance;
}

/** The least width of a ward at its tip as drawn, nanometres. */
export function leastTip({ tolerance }: PlanGap): number {
  return LEAST_TIP + 2 * tolerance;
}

/** By how much a flank of a ward stands inside the flank of its groove, on the face of the blade; nanometres. */
export function wardInset({ flank }: BladeLimits, gap: PlanGap): number {
  const all = gapAllRound(gap);
  return all / Math.cos(flank) - all * Math.tan(flank);
}

/** Width of a groove at its root before it is rounded, nanometres; 0 or less where the flanks meet. */
export function rootWidth({ grooveWidth, flank }: BladeLimits, depth: number): number {
  return grooveWidth - 2 * depth * Math.tan(flank);
}

/** Width of a ward at its tip, nanometres: that of the root less the gap on both flanks. */
export function tipWidth(blade: BladeLimits, gap: PlanGap, depth: number): number {
  return rootWidth(blade, depth) - 2 * wardInset(blade, gap);
}

/** How far an arc of the root reaches along flank and root, nanometres. */
export function rootReach({ rootRadius, flank }: BladeLimits): number {
  return rootRadius * Math.tan((Math.PI / 2 - flank) / 2);
}

/** The depths of a site, shallowest first: the greatest one, and steps up from it. */
export function siteDepths({ grooveDepth, depthStep }: BladeLimits, depths: number): number[] {
  return Array.from({ length: depths }, (_, i) => grooveDepth - (depths - 1 - i) * depthStep);
}

/** The band of heights that grooves may take, nanometres: above the back and its land, below the cuts. */
export function siteBand({ height, backZone, backRadius, cutZone }: BladeLimits, gap: PlanGap) {
  const land = leastLand(gap);
  return { from: Math.max(backZone, backRadius + land), to: height - Math.max(cutZone, land) };
}
