import { difference } from '../geom/clip.ts';
import { deepestPoint } from '../geom/deepest-point.ts';
import { wallsOf } from '../geom/inscribed-circle.ts';
import { boxOf, type Point } from '../geom/point.ts';
import { boundariesOf, isRegion, type Patch, type Region, regionOf } from '../geom/region.ts';
import { asTrustedRing, isRing, type Ring } from '../geom/ring.ts';
import { signedArea } from '../geom/signed-area.ts';
import { lightenOutline, lightenRegion } from '../geom/simplify.ts';
import { triangulate } from '../geom/triangulate.ts';
import { MOST_EDGES } from './coarse-edges.ts';
import { findContacts } from './find-contacts.ts';
import type { Collision, Contact, Feature, Placement } from './fit.ts';
import { placeBlank } from './place-blank.ts';
import { floorOf, plugSideOf } from './plug-side.ts';

/** What can be seen at one placement of a blank in an opening, best or not. Opening's coordinates, nanometres. */
export interface Explanation {
  /** Least gap between the outlines, or minus the greatest depth of a collision. */
  readonly gap: number;
  /** The deepest first; a ward before a plain wall that is as deep to within a twentieth. */
  readonly collisions: readonly Collision[];
  /** The narrowest first; empty where the blank collides. */
  readonly contacts: readonly Contact[];
}

/** Overlaps shallower than this are rounding of the placed outline, not collisions, nanometres: the gap is then 0. */
const SHALLOW = 3;

/** Greatest error of the depth of a collision, nanometres. */
const DEPTH_ACCURACY = 1;

/**
 * What touches or collides where, at a given placement: for the best one, or for a blank dragged by hand.
 *
 * @param opening the keyway as it is judged, nanometres.
 * @param blank the blank in its own frame; several outlines where it is worn through.
 * @check tests/unit/fit/explain-placement.test.ts
 */
export function explainPlacement(
  opening: Ring | Region,
  blank: Ring | readonly Ring[],
  placement: Placement,
): Explanation {
  const whole = isRegion(opening) ? opening : regionOf(opening);
  const { region } = lightenRegion(whole, MOST_EDGES);
  const wholeParts = isRing(blank) ? [blank] : blank;
  const parts = wholeParts.map((ring) => lightenOutline(ring, MOST_EDGES).points);
  const placed = parts.map((part) => placeBlank(part, placement));
  const overlaps = placed.flatMap((part) => collidingParts(region, part));
  const collisions = overlaps
    .map((patch) => describe(patch, region))
    .filter((collision) => collision.depth > SHALLOW)
    .sort((a, b) => weightOf(b) - weightOf(a));
  if (collisions.length > 0)
    return { gap: -Math.max(...collisions.map(({ depth }) => depth)), collisions, contacts: [] };
  const contacts = findContacts(region, placed).map((contact) => ({
    ...contact,
    blankFeature: renumber(contact.blankFeature, parts, wholeParts),
    openingFeature: renumber(contact.openingFeature, boundariesOf(region), boundariesOf(whole)),
  }));
  const touching = contacts.length === 0 || overlaps.length > 0;
  return { gap: touching ? 0 : contacts[0].gap, collisions, contacts };
}

/** A feature by its number in the outlines as given, where they were simplified. */
function renumber(
  feature: Feature,
  light: readonly (readonly Point[])[],
  whole: readonly (readonly Point[])[],
): Feature {
  if (light.every((loop, i) => loop === whole[i])) return feature;
  return { ...feature, index: whole.flat().indexOf(light.flat()[feature.index]) };
}

/** A ward is the reason, the wall opposite only what it pushes the blank against: at equal depth the ward is named. */
function weightOf({ depth, ward }: Collision): number {
  return ward ? depth * 1.05 : depth;
}

/** The parts of the placed blank that would share space with the plug. */
function collidingParts(opening: Region, placed: Ring): Region {
  return difference(regionOf(asTrustedRing(placed.map((p) => ({ x: Math.round(p.x), y: Math.round(p.y) })))), opening);
}

function describe(patch: Patch, opening: Region): Collision {
  const deepest = deepestOf(patch, opening);
  const { minY, maxY } = boxOf(patch.outer);
  const floor = floorOf(opening);
  return {
    region: [patch],
    ...plugSideOf(opening, deepest.at, isTall(patch)),
    from: minY - floor,
    to: maxY - floor,
    depth: deepest.depth,
  };
}

function isTall({ outer }: Patch): boolean {
  const box = boxOf(outer);
  return box.maxY - box.minY > box.maxX - box.minX;
}

/** The point of a colliding part that is furthest from the opening. */
function deepestOf(patch: Patch, opening: Region): { at: Point; depth: number } {
  const cells = signedArea(patch.outer) > 0 ? triangulate([patch]) : [];
  const found = cells.length > 0 ? deepestPoint(cells, wallsOf(opening), DEPTH_ACCURACY) : null;
  return found ? { at: found, depth: found.depth } : { at: patch.outer[0], depth: 0 };
}
