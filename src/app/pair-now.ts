import type { Conditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import { type InnerFit, innerFitRegion } from '../fit/inner-fit-region.ts';
import { blankUnder, judgePair, openingUnder } from '../fit/judge-pair.ts';
import { type Bands, judgeTolerance, type ThreeWay } from '../fit/judge-tolerance.ts';
import { prepareBlank } from '../fit/prepare-blank.ts';
import type { Opening } from '../fit/prepare-opening.ts';
import type { Region } from '../geom/region.ts';
import type { Ring } from '../geom/ring.ts';

/** A pair made ready under conditions. */
interface Ready {
  readonly opening: Opening;
  readonly entrant: readonly Ring[];
}

let last: { opening: Ring; entrant: Ring; wear: number; ready: Ready } | null = null;

/** The last pair stays ready: while a slider or a hand moves, only what it changes is made again. */
function readyPair(opening: Ring, entrant: Ring, conditions: Conditions): Ready {
  const { wear } = conditions;
  const sameOpening = last?.opening === opening && last.wear === wear;
  if (last && sameOpening && last.entrant === entrant) return last.ready;
  const ready: Ready = {
    opening: last && sameOpening ? last.ready.opening : openingUnder(opening, conditions),
    entrant: blankUnder(entrant, conditions),
  };
  last = { opening, entrant, wear, ready };
  return ready;
}

/** {@link judgePair} for the pair in hand. */
export function judgeNow(opening: Ring, entrant: Ring, conditions: Conditions): Fit {
  const ready = readyPair(opening, entrant, conditions);
  return judgePair(ready.opening, ready.entrant, conditions);
}

/** {@link judgeTolerance} for the pair in hand. */
export function toleranceNow(opening: Ring, entrant: Ring, fit: Fit, bands: Bands, conditions: Conditions): ThreeWay {
  const ready = readyPair(opening, entrant, conditions);
  return judgeTolerance(ready.opening, ready.entrant, fit, bands, conditions.tiltLimit);
}

/** All placements of the upright pair in hand. */
export function innerFitNow(opening: Ring, entrant: Ring, conditions: Conditions): InnerFit {
  const ready = readyPair(opening, entrant, conditions);
  return innerFitRegion(ready.opening, prepareBlank(ready.entrant));
}

/** The shapes of the pair in hand as the conditions leave them. */
export function shapesUnder(
  opening: Ring,
  entrant: Ring,
  conditions: Conditions,
): { opening: Region; entrant: readonly Ring[] } {
  const ready = readyPair(opening, entrant, conditions);
  return { opening: ready.opening.region, entrant: ready.entrant };
}
