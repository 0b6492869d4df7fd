import { offset } from '../geom/clip.ts';
import { boundariesOf, isRegion, type Region, regionOf } from '../geom/region.ts';
import { asTrustedRing, isRing, type Ring } from '../geom/ring.ts';
import { lightenOutline, lightenRegion } from '../geom/simplify.ts';
import { MOST_EDGES } from './coarse-edges.ts';
import { containsBlank, rationalOf } from './contain-exactly.ts';
import { findContacts } from './find-contacts.ts';
import type { Fit } from './fit.ts';
import { CLEARANCE_ACCURACY } from './measure-clearance.ts';
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
 * Outlines of very many vertices are simplified as they are for judging.
 * For a tilted fit the angle is taken as given: the witness, and that it is the best at that angle, are checked.
 *
 * @param opening and blank as they were judged (worn, where they were), nanometres.
 * @check tests/unit/fit/verify-fit.test.ts, with fits that are wrong on purpose
 */
export function verifyFit(opening: Ring | Region, blank: Ring | readonly Ring[], fit: Fit): string[] {
  const { region } = lightenRegion(isRegion(opening) ? opening : regionOf(opening), MOST_EDGES);
  const parts = (isRing(blank) ? [blank] : blank).map((ring) => asTrustedRing(lightenOutline(ring, MOST_EDGES).points));
  const turned = parts.map((part) => turnedInPlace(part, fit.placement.tilt));
  return fit.verdict === 'blocked' ? verifyBlocked(region, turned, fit) : verifyEntry(region, turned, fit);
}

/** An outline turned about its origin, in whole nanometres. */
function turnedInPlace(ring: Ring, tilt: number): Ring {
  const turned = placeBlank(ring, { x: 0, y: 0, tilt });
  return asTrustedRing(turned.map((p) => ({ x: Math.round(p.x), y: Math.round(p.y) })));
}

function verifyEntry(region: Region, parts: readonly Ring[], fit: Fit): string[] {
  const faults: string[] = [];
  if (!standsInside(region, parts, fit)) faults.push('the blank at the given placement is not inside the opening');
  const placed = parts.map((part) => placeBlank(part, { ...fit.placement, tilt: 0 }));
  const gap = findContacts(region, placed)[0]?.gap ?? 0;
  if (gap < fit.clearance - GRAIN - Math.max(0, fit.accuracy - CLEARANCE_ACCURACY))
    faults.push(`the gap at the given placement is ${um(gap)} um, less than the stated ${um(fit.clearance)} um`);
  const better = shrink(innerFitByParts(region, parts), fit.clearance + fit.accuracy + TOLERANCE);
  if (better.length > 0) faults.push(`a placement with more than ${um(fit.clearance + TOLERANCE)} um exists`);
  return faults;
}

/** A contact may lie at a crossing that no double hits, a tilted corner is rounded: these must go in within 5 nm; a simplified outline within its accuracy. */
function standsInside(region: Region, parts: readonly Ring[], { clearance, accuracy, placement }: Fit): boolean {
  const at = rationalOf(placement);
  if (containsBlank(boundariesOf(region), parts, at)) return true;
  const simplified = accuracy > CLEARANCE_ACCURACY;
  if (clearance > 0 && placement.tilt === 0 && !simplified) return false;
  return containsBlank(boundariesOf(offset(region, simplified ? GRAIN + accuracy : GRAIN, 'mitre')), parts, at);
}

function verifyBlocked(region: Region, parts: readonly Ring[], fit: Fit): string[] {
  const faults: string[] = [];
  const depth = -fit.clearance;
  const most = offset(region, depth + fit.accuracy + GRAIN, 'round', ARC);
  if (!containsBlank(boundariesOf(offset(most, ARC, 'mitre')), parts, rationalOf(fit.placement)))
    faults.push(`at the given placement the blank collides deeper than the stated ${um(depth)} um`);
  const least = depth - fit.accuracy - TOLERANCE;
  const grown = least > 0 ? offset(region, least, 'round', ARC) : region;
  if (shrink(innerFitByParts(grown, parts), GRAIN).length > 0)
    faults.push(`the blank already goes in with ${um(Math.max(0, least))} um of interference`);
  return faults;
}

function um(nm: number): string {
  return (nm / 1000).toFixed(1);
}
