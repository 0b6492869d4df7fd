import type { Ring } from '../geom/ring.ts';
import type { Fit } from './fit.ts';
import { goesIn, judgeFit, UNMEASURED } from './judge-fit.ts';
import { prepareBlank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';
import { type Sample, searchMaximum } from './search-maximum.ts';
import { placementOfTurned, reachOf, turnBlank } from './turn-blank.ts';

/** The best tilted clearance is within this of the best there is, nanometres. */
const TILT_ACCURACY = 1_000;

/**
 * The fit of a blank that may also stand turned by up to `limit` either way.
 *
 * A turn by d about the middle of the blank moves no point further than its reach times d, so neither does the
 * clearance change by more; the search over angles uses that to leave out what cannot be better. "Blocked" here means
 * blocked at every angle up to the limit, to within 1 um.
 *
 * @param limit greatest tilt either way, radians; 0 means upright only.
 * @returns `clearance` + `accuracy` is a bound over all angles; play and seat are those at the best angle.
 * @accuracy 1 um.
 */
export function judgeTilted(opening: Opening, rings: readonly Ring[], runningClearance: number, limit: number): Fit {
  const upright = judgeFit(opening, prepareBlank(rings), runningClearance);
  if (limit === 0) return upright;
  const sampleAt = (tilt: number): Sample<Fit> => {
    const fit = tilt === 0 ? upright : judgeFit(opening, prepareBlank(turnBlank(rings, tilt)), runningClearance);
    return { value: fit.clearance, atMost: fit.clearance + fit.accuracy + 1, detail: fit };
  };
  const best = searchMaximum(sampleAt, [-limit, limit], reachOf(rings), TILT_ACCURACY);
  return tiltedFit(rings, best.detail, best.at, best.bound);
}

/** {@link judgeTilted} without the interference: {@link UNMEASURED} where blocked at every angle. */
export function judgeTiltedEntry(
  opening: Opening,
  rings: readonly Ring[],
  runningClearance: number,
  limit: number,
): Fit {
  return goesInTilted(opening, rings, limit) ? judgeTilted(opening, rings, runningClearance, limit) : UNMEASURED;
}

/**
 * Whether the blank goes in at some tilt up to `limit`, without margins: {@link judgeTilted} for a yes or no.
 * An angle at which it does not even go into the opening grown by d rules out all angles within d / reach of it.
 */
export function goesInTilted(opening: Opening, rings: readonly Ring[], limit: number): boolean {
  const reach = reachOf(rings);
  const ranges: [number, number][] = [[-limit, limit]];
  for (let range = ranges.pop(); range; range = ranges.pop()) {
    const [from, to] = range;
    const middle = (from + to) / 2;
    const blank = prepareBlank(turnBlank(rings, middle));
    if (goesIn(opening, blank)) return true;
    if (limit === 0) return false;
    const growth = (reach * (to - from)) / 2;
    if (growth <= TILT_ACCURACY) continue;
    if (goesIn(opening.roundGrown(growth + TILT_ACCURACY / 4, TILT_ACCURACY / 5), blank))
      ranges.push([from, middle], [middle, to]);
  }
  return false;
}

/** A fit found for the turned outline, told for the outline itself. */
function tiltedFit(rings: readonly Ring[], fit: Fit, tilt: number, bound: number): Fit {
  return {
    ...fit,
    accuracy: Math.max(fit.accuracy, bound - fit.clearance),
    placement: placementOfTurned(rings, tilt, fit.placement),
    seated: placementOfTurned(rings, tilt, fit.seated),
  };
}
