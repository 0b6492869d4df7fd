import { plainConditions } from '../fit/conditions.ts';
import type { Verdict } from '../fit/fit.ts';
import { blankUnder, judgePairEntry, openingUnder } from '../fit/judge-pair.ts';
import { type Ring, ringOfBox } from '../geom/ring.ts';
import { heightAt, type Strip, type ThicknessCurve, tallestOf, thicknessAt } from './thickness-curve.ts';

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
  const { thickness, height } = strip;
  const goesIn = (wider: number, taller: number) =>
    height + taller <= tallestOf(curve) && thicknessAt(curve, height + taller) >= thickness + wider;
  if (!goesIn(0, 0)) return 'blocked';
  const more = 2 * runningClearance;
  if (goesIn(more + CLOSE, more + CLOSE)) return 'enters';
  if (more > CLOSE && !(goesIn(more - CLOSE, 0) && goesIn(0, more - CLOSE))) return 'tight';
  if (curve.tiltLimit > 0) return more > 0 && goesIn(more, more) ? 'enters' : 'tight';
  const conditions = plainConditions(runningClearance);
  const ring = ringOfBox({ minX: 0, minY: 0, maxX: thickness, maxY: height });
  const fit = judgePairEntry(openingUnder(opening, conditions), blankUnder(ring, conditions), conditions);
  return fit.verdict === 'blocked' ? 'tight' : fit.verdict;
}

/** Which size of a strip leaves it less than the running clearance; both where neither alone could be less to give it room. */
export type TightCause = 'thickness' | 'height' | 'both';

/**
 * What makes a strip tight that goes in: the size that would have to be less by the smaller length to give it the clearance on
 * every side.
 *
 * @param strip nanometres.
 * @param runningClearance nanometres.
 * @check tests/unit/gauge/judge-strip.test.ts
 */
export function whyTight(curve: ThicknessCurve, strip: Strip, runningClearance: number): TightCause {
  const [thick, tall] = [strip.thickness + 2 * runningClearance, strip.height + 2 * runningClearance];
  const ifAny = (less: number, size: number) => (less < size ? less : Infinity);
  const thinner = ifAny(thick - thicknessAt(curve, tall), strip.thickness);
  const lower = ifAny(tall - (heightAt(curve, thick) ?? 0), strip.height);
  if (thinner === Infinity && lower === Infinity) return 'both';
  return lower < thinner ? 'height' : 'thickness';
}
