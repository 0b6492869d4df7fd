import { intersection, offset } from '../geom/clip.ts';
import type { Region } from '../geom/region.ts';
import { regionOf } from '../geom/region.ts';
import { regionArea } from '../geom/region-area.ts';
import { makeRing, type Ring } from '../geom/ring.ts';
import { simplifyOutline } from '../geom/simplify.ts';

/** Chords of an eroded outline stand off their arcs by no more than this, nanometres. */
const ARC_TOLERANCE = 250;

/** Vertices of the blank that stand off its outline by less than this are left out, nanometres. */
const SMOOTHED = 200;

/**
 * By how much more than the clearance a keyway is eroded, nanometres: chords of arcs, rounding, what the outline is
 * smoothed by, and the 50 nm that the search for the clearance may stop short of. So the blank has the clearance really.
 */
export const SLACK = ARC_TOLERANCE + SMOOTHED + 50 + 10;

/** Fins thinner than twice this are no part of a blade, nanometres. */
const THINNEST_FIN = 5_000;

/** Parts smaller than this are crumbs of clipping: a hundredth of a square millimetre, in square nanometres. */
export const CRUMB = 1e10;

/**
 * Where a blank may have material that is to keep a clearance from the walls of a keyway: the keyway eroded by it.
 *
 * @param clearance nanometres, 0 or more.
 * @returns empty where the keyway is too narrow for any blank.
 * @accuracy within the true erosion, short of it by at most {@link SLACK} and a few nanometres.
 */
export function roomFor(opening: Region, clearance: number): Region {
  return offset(opening, -(clearance + SLACK), 'round', ARC_TOLERANCE);
}

/** The part that serves as a blade, and the others that do not hang together with it. */
export interface BladeParts {
  readonly blade: Ring | null;
  readonly apart: readonly Region[];
}

/**
 * The blade in a region: its largest part without fins thinner than a hundredth of a millimetre.
 *
 * @returns `blade` null where nothing larger than a crumb is left; `apart` the largest first.
 * @check tests/unit/passage/widest-blank.test.ts
 */
export function bladeOf(region: Region): BladeParts {
  const parts = withoutFins(region)
    .map(({ outer }) => smoothed(outer))
    .filter((ring) => ring !== null)
    .map((ring) => ({ ring, area: regionArea(regionOf(ring)) }))
    .filter(({ area }) => area > CRUMB)
    .sort((a, b) => b.area - a.area);
  return { blade: parts[0]?.ring ?? null, apart: parts.slice(1).map(({ ring }) => regionOf(ring)) };
}

/**
 * What a blade keeps off the fins: a shared part is a blade where these hang together. An intersection is eroded by
 * eroding its parts, so that regions may be shrunken one by one.
 */
export function finCore(region: Region): Region {
  return offset(region, -THINNEST_FIN, 'mitre');
}

/** Thin fins go; sharp corners and all else stay as they are. */
export function withoutFins(region: Region): Region {
  if (region.length === 0) return [];
  const core = finCore(region);
  return core.length === 0 ? [] : intersection(region, offset(core, THINNEST_FIN, 'mitre'));
}

/** The outline without vertices that hardly stand out; null where it is none. */
function smoothed(outer: Ring): Ring | null {
  for (const points of [simplifyOutline(outer, SMOOTHED), outer]) {
    const made = makeRing(points);
    if (made.ok) return made.ring;
  }
  return null;
}
