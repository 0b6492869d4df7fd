import type { Conditions } from '../../fit/conditions.ts';
import type { Fit } from '../../fit/fit.ts';
import { type InnerFit, innerFitRegion } from '../../fit/inner-fit-region.ts';
import { blankUnder, judgePair, openingUnder } from '../../fit/judge-pair.ts';
import { type Bands, judgeTolerance, type ThreeWay } from '../../fit/judge-tolerance.ts';
import { growRegion, shrinkRings } from '../../fit/offset-shapes.ts';
import { placeBlank } from '../../fit/place-blank.ts';
import { prepareBlank } from '../../fit/prepare-blank.ts';
import type { Opening } from '../../fit/prepare-opening.ts';
import type { Region } from '../../geom/region.ts';
import { asTrustedRing, type Ring } from '../../geom/ring.ts';

/** A pair made ready under conditions. */
interface Ready {
  readonly opening: Opening;
  readonly entrant: readonly Ring[];
}

/** The shapes at the two ends of the tolerance bands; an end without any width left is empty. */
export interface BandShapes {
  readonly fullest: readonly Ring[];
  readonly leanest: readonly Ring[];
  readonly widest: Region;
  readonly narrowest: Region;
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

/** The same function, but asked the same twice in a row it answers from memory: drawing and readings both ask. */
function keepLast<A extends readonly unknown[], T>(compute: (...given: A) => T): (...given: A) => T {
  let kept: { given: A; answer: T } | null = null;
  return (...given) => {
    if (!kept?.given.every((value, i) => Object.is(value, given[i]))) kept = { given, answer: compute(...given) };
    return kept.answer;
  };
}

const judgeReady = keepLast(
  (ready: Ready, runningClearance: number, tiltLimit: number): Fit =>
    judgePair(ready.opening, ready.entrant, { runningClearance, tiltLimit, wear: 0 }),
);

const tolerateReady = keepLast(
  (ready: Ready, fit: Fit, blank: number, opening: number, tiltLimit: number): ThreeWay =>
    judgeTolerance(ready.opening, ready.entrant, fit, { blank, opening }, tiltLimit),
);

const innerFitReady = keepLast(
  (ready: Ready, tilt: number): InnerFit =>
    innerFitRegion(ready.opening, prepareBlank(tilt === 0 ? ready.entrant : turned(ready.entrant, tilt))),
);

/** Turned about the blank's own origin, so that the region counts as placements do; whole nanometres. */
function turned(rings: readonly Ring[], tilt: number): readonly Ring[] {
  return rings.map((ring) =>
    asTrustedRing(
      placeBlank(ring, { x: 0, y: 0, tilt }).map(({ x, y }) => ({ x: Math.round(x) + 0, y: Math.round(y) + 0 })),
    ),
  );
}

const bandsOfReady = keepLast((ready: Ready, blank: number, opening: number): BandShapes => {
  const { region } = ready.opening;
  return {
    fullest: shrinkRings(ready.entrant, -blank),
    leanest: shrinkRings(ready.entrant, blank),
    widest: growRegion(region, opening),
    narrowest: growRegion(region, -opening),
  };
});

/** {@link judgePair} for the pair in hand. */
export function judgeNow(opening: Ring, entrant: Ring, conditions: Conditions): Fit {
  const { runningClearance, tiltLimit } = conditions;
  return judgeReady(readyPair(opening, entrant, conditions), runningClearance, tiltLimit);
}

/** {@link judgeTolerance} for the pair in hand. */
export function toleranceNow(opening: Ring, entrant: Ring, fit: Fit, bands: Bands, conditions: Conditions): ThreeWay {
  return tolerateReady(readyPair(opening, entrant, conditions), fit, bands.blank, bands.opening, conditions.tiltLimit);
}

/** All placements of the pair in hand with the blank turned by `tilt` about its own origin; upright where not stated. */
export function innerFitNow(opening: Ring, entrant: Ring, conditions: Conditions, tilt = 0): InnerFit {
  return innerFitReady(readyPair(opening, entrant, conditions), tilt);
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

/** The shapes of the pair in hand at the ends of its tolerance bands. */
export function bandShapes(opening: Ring, entrant: Ring, bands: Bands, conditions: Conditions): BandShapes {
  return bandsOfReady(readyPair(opening, entrant, conditions), bands.blank, bands.opening);
}
