import { plainConditions } from '../fit/conditions.ts';
import type { Verdict } from '../fit/fit.ts';
import { blankUnder, judgePairEntry, openingUnder } from '../fit/judge-pair.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';
import { type Strip, type ThicknessCurve, tallestOf, thicknessAt } from './thickness-curve.ts';

/** What curve and fit may differ by, each within its accuracy, nanometres: nearer cases are left to the fit. */
const CLOSE = 5_000;

/**
 * What a strip does in an opening: whether it has the running clearance all round, not only across. Spare thickness s leaves at
 * most s / 2 on either side. The curve decides where a strip that is larger by the clearance on every side goes in, or where one
 * larger in one direction does not. Between, where round corners would and square ones would not, the full fit is asked; with
 * tilt, where that may take seconds, square corners decide: "tight" may then have up to 1.42 times the running clearance.
 *
 * @param strip nanometres.
 * @param runningClearance nanometres.
 * @returns blocked where the strip lies above the curve; in contact it is tight.
 * @check tests/unit/gauge/judge-strip.test.ts
 */
export function judgeStrip(curve: ThicknessCurve, opening: Ring, strip: Strip, runningClearance: number): Verdict {
  const goesIn = (wider: number, taller: number) => goesInLarger(curve, strip, wider, taller);
  if (!goesIn(0, 0)) return 'blocked';
  const more = 2 * runningClearance;
  if (goesIn(more + CLOSE, more + CLOSE)) return 'enters';
  if (more > CLOSE && !(goesIn(more - CLOSE, 0) && goesIn(0, more - CLOSE))) return 'tight';
  if (curve.tiltLimit > 0) return more > 0 && goesIn(more, more) ? 'enters' : 'tight';
  const conditions = plainConditions(runningClearance);
  const fit = judgePairEntry(openingUnder(opening, conditions), blankUnder(ringOf(strip), conditions), conditions);
  return fit.verdict === 'blocked' ? 'tight' : fit.verdict;
}

function goesInLarger(curve: ThicknessCurve, { thickness, height }: Strip, wider: number, taller: number): boolean {
  return height + taller <= tallestOf(curve) && thicknessAt(curve, height + taller) >= thickness + wider;
}

/** Which size of a strip leaves it less than the running clearance; a corner where neither does alone. */
export type TightCause = 'thickness' | 'height' | 'both' | 'corner';

/**
 * What makes a strip tight that goes in: it could not be thicker, or not taller, by the clearance of both sides.
 *
 * @param strip nanometres.
 * @param runningClearance nanometres.
 * @check tests/unit/gauge/judge-strip.test.ts
 */
export function whyTight(curve: ThicknessCurve, strip: Strip, runningClearance: number): TightCause {
  const more = 2 * runningClearance;
  const [isThick, isTall] = [!goesInLarger(curve, strip, more, 0), !goesInLarger(curve, strip, 0, more)];
  if (isThick && isTall) return 'both';
  if (isThick) return 'thickness';
  return isTall ? 'height' : 'corner';
}

function ringOf({ thickness, height }: Strip): Ring {
  return asTrustedRing([
    { x: 0, y: 0 },
    { x: thickness, y: 0 },
    { x: thickness, y: height },
    { x: 0, y: height },
  ]);
}
