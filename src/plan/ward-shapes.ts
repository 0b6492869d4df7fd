import type { BladeLimits } from '../family/plan.ts';
import { makeRing, type Ring } from '../geom/ring.ts';
import { checkMilled } from '../profile/check-milled.ts';
import { millOutline } from '../profile/mill-outline.ts';
import { openingFromBlank } from '../profile/opening-from-blank.ts';
import type { Milled } from '../profile/profile.ts';
import { CHORD_ERROR } from '../profile/round-corners.ts';
import { gapAllRound, type PlanGap } from './plan-gap.ts';
import { grooveAt } from './site-shape.ts';
import type { WardSite } from './ward-sites.ts';

/** A section with its outline, or why there is none. */
export type ShapeResult =
  | { readonly ok: true; readonly milled: Milled; readonly ring: Ring }
  | { readonly ok: false; readonly what: string; readonly cure: string };

/**
 * The blade with a groove at every site whose depth is not 0.
 *
 * @param depths for each site the number of its depth, from 1; 0: no groove.
 */
export function bladeOf(blade: BladeLimits, sites: readonly WardSite[], depths: readonly number[]): ShapeResult {
  const { thickness, height, backRadius } = blade;
  const grooves = sites.flatMap((site, i) =>
    depths[i] > 0 ? [grooveAt(blade, site, site.depths[depths[i] - 1])] : [],
  );
  const milled = { thickness, height, backRadius, grooves: grooves.sort((a, b) => a.bottom - b.bottom) };
  const [fault] = checkMilled(milled);
  if (fault) return { ok: false, what: fault.message, cure: fault.cure };
  const points = millOutline(milled);
  const made = makeRing(Array.isArray(points) ? points : []);
  if (made.ok) return { ok: true, milled, ring: made.ring };
  return { ok: false, what: `its outline ${made.fault.message}`, cure: 'Leave more room between the grooves.' };
}

/** What the chords of rounded roots may take of the gap, most where a groove is deeper than its ward; nanometres. */
function chordsOf({ rootRadius }: BladeLimits): number {
  return rootRadius > 0 ? CHORD_ERROR : 0;
}

/**
 * The keyway with a ward at every site whose depth is not 0: that of the blade with just these grooves, with the gap all
 * round. A blank whose grooves are as deep or deeper enters it, another one is stopped.
 *
 * @check tests/laws/ward-sites.test.ts, both ways by the fit core
 */
export function keywayOf(
  blade: BladeLimits,
  sites: readonly WardSite[],
  depths: readonly number[],
  gap: PlanGap,
): ShapeResult {
  const cut = bladeOf(blade, sites, depths);
  if (!cut.ok) return cut;
  const source = { name: 'blank', ring: cut.ring, milled: cut.milled };
  const made = openingFromBlank(source, gapAllRound(gap) + chordsOf(blade));
  if (!made.ok) return made;
  const { milled, ring } = made.made;
  if (!milled || milled.grooves.length < cut.milled.grooves.length)
    return { ok: false, what: 'a ward is too narrow to be left', cure: 'Give a wider groove or a smaller gap.' };
  return { ok: true, milled, ring };
}
