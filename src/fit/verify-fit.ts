import { offset } from '../geom/clip.ts';
import { boundariesOf, type Region, regionOf } from '../geom/region.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';
import { containsExactly, rationalOf } from './contain-exactly.ts';
import { findContacts } from './find-contacts.ts';
import type { Fit } from './fit.ts';
import { placeBlank } from './place-blank.ts';
import { innerFitByParts, shrink } from './sum-parts.ts';

/** By how much the second way may differ before it is a disagreement, nanometres. */
const TOLERANCE = 1_000;

/** Rounding of the whole-nanometre regions of the second way, nanometres. */
const GRAIN = 5;

/** Arc tolerance of grown openings here, nanometres: coarse is quick, and it is allowed for. */
const ARC = 400;

/**
 * Checks a fit without the method that made it, and says what does not agree; empty means confirmed.
 *
 * The witness: exact containment of the placed blank, and its narrowest gap measured against every edge. That it is
 * the best: the inner-fit region by convex parts and clipper-lib, shrunk by a little more than the clearance, must be
 * empty. A blocked pair must go in when the opening is grown by its interference and not when grown by less.
 *
 * @param opening and blank as they were judged, nanometres.
 * @check tests/unit/fit/verify-fit.test.ts, with fits that are wrong on purpose
 */
export function verifyFit(opening: Ring, blank: Ring, fit: Fit): string[] {
  const region = regionOf(opening);
  const turned = asTrustedRing(
    placeBlank(blank, { ...fit.placement, x: 0, y: 0 }).map((p) => ({ x: Math.round(p.x), y: Math.round(p.y) })),
  );
  return fit.verdict === 'blocked' ? verifyBlocked(region, turned, fit) : verifyEntry(region, turned, fit);
}

function verifyEntry(region: Region, blank: Ring, fit: Fit): string[] {
  const faults: string[] = [];
  const witness =
    fit.clearance === 0
      ? touchesWithin(region, blank, fit)
      : containsExactly(boundariesOf(region), blank, rationalOf(fit.placement));
  if (!witness) faults.push('the blank at the given placement is not inside the opening');
  const gap = findContacts(region, placeBlank(blank, { ...fit.placement, tilt: 0 }), (p) => p.y)[0]?.gap ?? 0;
  if (gap < fit.clearance - GRAIN)
    faults.push(`the gap at the given placement is ${um(gap)} um, less than the stated ${um(fit.clearance)} um`);
  const better = shrink(innerFitByParts(region, blank), fit.clearance + fit.accuracy + TOLERANCE);
  if (better.length > 0) faults.push(`a placement with more than ${um(fit.clearance + TOLERANCE)} um exists`);
  return faults;
}

/** A contact may lie at a crossing that no double hits: then the blank must go in within 5 nm. */
function touchesWithin(region: Region, blank: Ring, fit: Fit): boolean {
  const at = rationalOf(fit.placement);
  return (
    containsExactly(boundariesOf(region), blank, at) ||
    containsExactly(boundariesOf(offset(region, GRAIN, 'mitre')), blank, at)
  );
}

function verifyBlocked(region: Region, blank: Ring, fit: Fit): string[] {
  const faults: string[] = [];
  const depth = -fit.clearance;
  const most = offset(region, depth + fit.accuracy + GRAIN, 'round', ARC);
  if (!containsExactly(boundariesOf(offset(most, ARC, 'mitre')), blank, rationalOf(fit.placement)))
    faults.push(`at the given placement the blank collides deeper than the stated ${um(depth)} um`);
  const least = depth - fit.accuracy - TOLERANCE;
  const grown = least > 0 ? offset(region, least, 'round', ARC) : region;
  if (shrink(innerFitByParts(grown, blank), GRAIN).length > 0)
    faults.push(`the blank already goes in with ${um(Math.max(0, least))} um of interference`);
  return faults;
}

function um(nm: number): string {
  return (nm / 1000).toFixed(1);
}
