import { regionOf } from '../geom/region.ts';
import type { Ring } from '../geom/ring.ts';
import type { Conditions } from './conditions.ts';
import type { Fit } from './fit.ts';
import { judgeEntry, judgeFit } from './judge-fit.ts';
import { judgeTilted, judgeTiltedEntry } from './judge-tilted.ts';
import { growRegion, shrinkRing } from './offset-shapes.ts';
import { prepareBlank } from './prepare-blank.ts';
import { type Opening, prepareOpening } from './prepare-opening.ts';

/** A keyway as it is judged: worn where the conditions say so. */
export function openingUnder(ring: Ring, { wear }: Conditions): Opening {
  return prepareOpening(wear === 0 ? ring : growRegion(regionOf(ring), wear));
}

/** A blank as it is judged: worn where the conditions say so; empty where nothing of it would be left. */
export function blankUnder(ring: Ring, { wear }: Conditions): readonly Ring[] {
  return shrinkRing(ring, wear);
}

/**
 * The fit of a pair under conditions; {@link judgeFit} where the blank stands upright.
 *
 * @param blank what {@link blankUnder} gave.
 * @throws RangeError where wear has left nothing of the blank.
 */
export function judgePair(opening: Opening, blank: readonly Ring[], conditions: Conditions): Fit {
  demandBlank(blank, conditions);
  const { runningClearance, tiltLimit } = conditions;
  if (tiltLimit > 0) return judgeTilted(opening, blank, runningClearance, tiltLimit);
  return judgeFit(opening, prepareBlank(blank), runningClearance);
}

/**
 * The same without the interference, which costs most of the time: a blocked pair has clearance -Infinity and no
 * meaningful placement.
 */
export function judgePairEntry(opening: Opening, blank: readonly Ring[], conditions: Conditions): Fit {
  demandBlank(blank, conditions);
  const { runningClearance, tiltLimit } = conditions;
  if (tiltLimit > 0) return judgeTiltedEntry(opening, blank, runningClearance, tiltLimit);
  return judgeEntry(opening, prepareBlank(blank), runningClearance);
}

function demandBlank(blank: readonly Ring[], { wear }: Conditions): void {
  if (blank.length > 0) return;
  throw new RangeError(`nothing is left of it, worn by ${wear / 1e3} um. Give less wear, or leave it out`);
}
