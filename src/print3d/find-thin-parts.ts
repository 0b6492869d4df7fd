import { difference, intersection, offset } from '../geom/clip.ts';
import { inscribedCircle } from '../geom/inscribed-circle.ts';
import { type Box, boxOf } from '../geom/point.ts';
import { type Region, regionOf } from '../geom/region.ts';
import { regionArea } from '../geom/region-area.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';

/** A part of a section that is thinner than a width; nanometres. */
export interface ThinPart {
  /** Diameter of the greatest circle in it. */
  readonly width: number;
  readonly box: Box;
}

/** Chords of the circles that are rolled through a section stay this near, nanometres. */
const ARC = 100;

/** Rounding of the two offsets, nanometres. */
const SLACK = 500;

/** What is smaller than this square is a crumb of rounding, square nanometres. */
const CRUMB = 1e8;

/**
 * The parts of a region into which a circle of a width does not reach: its morphological opening takes them away. A corner
 * that is only rounded off is none: a part has to reach more than half the width past what stays, as a corner sharper than
 * 60 degrees does.
 *
 * @param width nanometres, more than 0.
 * @accuracy 1 um.
 * @source opening by a disc: J. Serra, Image Analysis and Mathematical Morphology, 1982, from memory.
 * @check tests/unit/print3d/find-thin-parts.test.ts
 */
export function findThinParts(region: Region, width: number): ThinPart[] {
  const radius = width / 2;
  const core = offset(region, -radius, 'round', ARC);
  const lost = difference(region, offset(core, radius + SLACK, 'round', ARC));
  const far = difference(region, offset(core, width + SLACK, 'round', ARC));
  return lost.flatMap((patch) => {
    const own = intersection([patch], far);
    if (regionArea(own) < CRUMB) return [];
    const { radius: half } = inscribedCircle([patch], SLACK);
    return [{ width: Math.min(width, 2 * half), box: boxOf(patch.outer) }];
  });
}

/** What is round an outline: a frame so wide, less what is inside. */
export function regionRound(rings: readonly Ring[], frame: number): Region {
  const { minX, minY, maxX, maxY } = boxOf(rings.flat());
  const [x0, y0, x1, y1] = [minX - frame, minY - frame, maxX + frame, maxY + frame].map(Math.round);
  const corners = [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ];
  return difference(
    regionOf(asTrustedRing(corners)),
    rings.flatMap((ring) => regionOf(ring)),
  );
}
