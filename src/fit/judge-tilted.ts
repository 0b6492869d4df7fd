import type { Ring } from '../geom/ring.ts';
import type { Fit } from './fit.ts';
import { goesIn, judgeFit } from './judge-fit.ts';
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
export function judgeTilted(opening: Opening, ring: Ring, runningClearance: number, limit: number): Fit {
  const upright = judgeFit(opening, prepareBlank(ring), runningClearance);
  if (limit === 0) return upright;
  const sampleAt = (tilt: number): Sample<Fit> => {
    const fit = tilt === 0 ? upright : judgeFit(opening, prepareBlank(turnBlank(ring, tilt)), runningClearance);
    return { value: fit.clearance, atMost: fit.clearance + fit.accuracy + 1, detail: fit };
  };
  const best = searchMaximum(sampleAt, [-limit, limit], reachOf(ring), TILT_ACCURACY);
  return tiltedFit(ring, best.detail, best.at, best.bound);
}

/**
 * Whether the blank goes in at some tilt up to `limit`, without margins: {@link judgeTilted} for a yes or no.
 * An angle at which it does not even go into the opening grown by d rules out all angles within d / reach of it.
 */
export function goesInTilted(opening: Opening, ring: Ring, limit: number): boolean {
  const reach = reachOf(ring);
  const ranges: [number, number][] = [[-limit, limit]];
  for (let range = ranges.pop(); range; range = ranges.pop()) {
    const [from, to] = range;
    const middle = (from + to) / 2;
    const blank = prepareBlank(turnBlank(ring, middle));
    if (goesIn(opening, blank)) return true;
    const growth = (reach * (to - from)) / 2;
    if (growth <= TILT_ACCURACY) continue;
    if (goesIn(opening.roundGrown(growth + TILT_ACCURACY / 4, TILT_ACCURACY / 5), blank))
      ranges.push([from, middle], [middle, to]);
  }
  return false;
}

/** A fit found for the turned outline, told for the outline itself. */
function tiltedFit(ring: Ring, fit: Fit, tilt: number, bound: number): Fit {
  return {
    ...fit,
    accuracy: Math.max(fit.accuracy, bound - fit.clearance),
    placement: placementOfTurned(ring, tilt, fit.placement),
    seated: placementOfTurned(ring, tilt, fit.seated),
  };
}
