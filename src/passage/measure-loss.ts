import { difference, intersection, offset } from '../geom/clip.ts';
import { type Box, boxOf } from '../geom/point.ts';
import { type Patch, type Region, regionOf } from '../geom/region.ts';
import { regionArea } from '../geom/region-area.ts';
import type { Ring } from '../geom/ring.ts';
import type { Loss, LossPlace, LossSide } from './passage.ts';

/** Parts smaller than this are not told as places: a thousandth of a square millimetre, in square nanometres. */
const LEAST_PLACE = 1e9;

/** A part that ends within this of the blank's end lies beyond it, nanometres. */
const BEYOND = 2_000;

/**
 * What a blank does not have of the room that a keyway alone would give, both where they lie.
 *
 * @param room the keyway eroded by the clearance.
 * @param blank its back on y = 0.
 * @check tests/unit/passage/measure-loss.test.ts
 */
export function measureLoss(room: Region, blank: Ring): Loss {
  const region = difference(room, regionOf(blank));
  const own = regionArea(room);
  const area = regionArea(region);
  const box = boxOf(blank);
  const places = withoutRims(region)
    .map((patch) => placeOf(patch, box))
    .filter((place) => place.area > LEAST_PLACE)
    .sort((a, b) => b.area - a.area);
  return { own, area, share: own > 0 ? area / own : 0, places, region };
}

/** Rims along the outline thinner than twice this are no places, nanometres: keyways differ so much in their gaps. */
const RIM = 25_000;

function withoutRims(region: Region): Region {
  const core = offset(region, -RIM, 'mitre');
  return core.length === 0 ? [] : intersection(region, offset(core, RIM, 'mitre'));
}

function placeOf(patch: Patch, blank: Box): LossPlace {
  const box = boxOf(patch.outer);
  const { minY: from, maxY: to } = box;
  return { side: sideOf(patch, box, blank), from, to, area: regionArea([patch]) };
}

function sideOf({ holes }: Patch, box: Box, blank: Box): LossSide {
  if (box.minY >= blank.maxY - BEYOND) return 'above';
  if (box.maxY <= blank.minY + BEYOND) return 'below';
  const reachesRound = box.minX < blank.minX - BEYOND && box.maxX > blank.maxX + BEYOND;
  if (holes.length > 0 || reachesRound) return 'around';
  return box.minX + box.maxX < blank.minX + blank.maxX ? 'left' : 'right';
}
