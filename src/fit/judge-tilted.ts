import type { Ring } from '../geom/ring.ts';
import type { Fit } from './fit.ts';
import { goesIn, judgeEntry, judgeFit, UNMEASURED } from './judge-fit.ts';
import { type Blank, prepareBlank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';
import { polishMaximum, type Sample, searchMaximum } from './search-maximum.ts';
import { placementOfTurned, reachOf, turnBlank } from './turn-blank.ts';

/** The best tilted clearance is within this of the best there is, nanometres. */
const TILT_ACCURACY = 1_000;

/** Pairs of edges above which an angle is not looked at lightly. */
const MUCH_WORK = 60_000;

/** The least tilted interference of a blocked pair is found to within this part of the upright one, but not closer than 1 um. */
const BLOCKED_SHARE = 1 / 20;

/**
 * The fit of a blank that may also stand turned by up to `limit` either way.
 *
 * A turn by d about the middle of the blank moves no point further than its reach times d, so neither does the
 * clearance change by more; the search over angles uses that to leave out what cannot be better. "Blocked" here means
 * blocked at every angle up to the limit, to within 1 um. By how much is told less closely than for an upright blank,
 * with its accuracy: wards make the interference nearly the same at all angles, which no bound by turning can see.
 *
 * @param limit greatest tilt either way, radians; 0 means upright only.
 * @returns `clearance` + `accuracy` is a bound over all angles; play and seat are those at the best angle.
 * @accuracy as `accuracy` says: 1 um where it goes in (20 um for outlines of hundreds of vertices each); a twentieth of the upright interference where it is blocked.
 */
export function judgeTilted(opening: Opening, rings: readonly Ring[], runningClearance: number, limit: number): Fit {
  if (limit === 0) return judgeFit(opening, prepareBlank(rings), runningClearance);
  const { rings: light, within } = prepareBlank(rings);
  const fit = goesInTilted(opening, light, limit)
    ? bestEntry(opening, light, runningClearance, limit)
    : leastBlocked(opening, light, runningClearance, limit);
  return within === 0 ? fit : { ...fit, accuracy: fit.accuracy + within };
}

/** {@link judgeTilted} without the interference: {@link UNMEASURED} where blocked at every angle. */
export function judgeTiltedEntry(
  opening: Opening,
  rings: readonly Ring[],
  runningClearance: number,
  limit: number,
): Fit {
  const blank = prepareBlank(rings);
  if (!goesInTilted(opening, blank.rings, limit)) return UNMEASURED;
  const fit = bestEntry(opening, blank.rings, runningClearance, limit);
  return { ...fit, accuracy: fit.accuracy + blank.within };
}

/** Outlines of hundreds of vertices are tilted less closely: a look at one angle takes a tenth of a second there. */
function accuracyFor(opening: Opening, rings: readonly Ring[]): number {
  const work = opening.index.minY.length * rings.flat().length;
  return work > MUCH_WORK ? 20 * TILT_ACCURACY : TILT_ACCURACY;
}

/** The greatest clearance over the angles of a blank that goes in at some of them. Where it does not, none is below zero. */
function bestEntry(opening: Opening, rings: readonly Ring[], runningClearance: number, limit: number): Fit {
  const sampleAt = (tilt: number): Sample<Fit> => {
    const fit = judgeEntry(opening, prepareBlank(turnBlank(rings, tilt)), runningClearance);
    if (fit.verdict === 'blocked') return { value: fit.clearance, atMost: 0, detail: fit };
    return { value: fit.clearance, atMost: fit.clearance + fit.accuracy + 1, detail: fit };
  };
  const best = searchMaximum(sampleAt, [-limit, limit], reachOf(rings), accuracyFor(opening, rings));
  if (best.detail.verdict !== 'blocked') {
    const top = polishMaximum(sampleAt, best, (2 * TILT_ACCURACY) / reachOf(rings), [-limit, limit]);
    return tiltedFit(rings, top.detail, top.at, Math.max(top.value, best.bound));
  }
  // It goes in by less than 1 um, between two looks: the angle found by the yes-or-no search is as good as any.
  const at = entryAngle(opening, rings, limit) ?? best.at;
  const fit = judgeFit(opening, prepareBlank(turnBlank(rings, at)), runningClearance);
  return tiltedFit(rings, fit, at, best.bound);
}

/** The least interference over the angles of a blank that is blocked at all of them. */
function leastBlocked(opening: Opening, rings: readonly Ring[], runningClearance: number, limit: number): Fit {
  const judgeAt = (tilt: number) => judgeFit(opening, prepareBlank(turnBlank(rings, tilt)), runningClearance);
  const upright = judgeAt(0);
  const sampleAt = (tilt: number): Sample<Fit> => {
    const fit = tilt === 0 ? upright : judgeAt(tilt);
    return { value: fit.clearance, atMost: fit.clearance + fit.accuracy + 1, detail: fit };
  };
  const accuracy = Math.max(accuracyFor(opening, rings), -upright.clearance * BLOCKED_SHARE);
  const best = searchMaximum(sampleAt, [-limit, limit], reachOf(rings), accuracy);
  return tiltedFit(rings, best.detail, best.at, Math.min(best.bound, 0));
}

/**
 * Whether the blank goes in at some tilt up to `limit`, without margins: {@link judgeTilted} for a yes or no.
 * An angle at which it does not even go into the opening grown by d rules out all angles within d / reach of it.
 */
export function goesInTilted(opening: Opening, rings: readonly Ring[], limit: number): boolean {
  return entryAngle(opening, rings, limit) !== null;
}

/** An angle at which the blank goes in, or null. */
function entryAngle(opening: Opening, rings: readonly Ring[], limit: number): number | null {
  const reach = reachOf(rings);
  const ranges: [number, number][] = [[-limit, limit]];
  for (let range = ranges.shift(); range; range = ranges.shift()) {
    const [from, to] = range;
    const middle = (from + to) / 2;
    const blank = prepareBlank(turnBlank(rings, middle));
    if (goesIn(opening, blank)) return middle;
    if (limit === 0) return null;
    const growth = (reach * (to - from)) / 2;
    if (growth <= TILT_ACCURACY) continue;
    if (mayGoIn(opening, blank, growth)) ranges.push([from, middle], [middle, to]);
  }
  return null;
}

/** Whether the blank goes into the opening grown by at least `growth`; never no where it does. */
function mayGoIn(opening: Opening, blank: Blank, growth: number): boolean {
  const arc = TILT_ACCURACY / 5;
  const grown = opening.roundGrown(growth + arc + 50, arc);
  const short = grown.within - opening.within;
  return goesIn(short === 0 ? grown : opening.roundGrown(growth + arc + 50 + short, arc), blank);
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
