import type { Point } from '../geom/point.ts';
import { type CurveKnot, knotsOf, thicknessOf } from './knots.ts';
import { TILTED_ACCURACY, tiltedLine } from './tilted-line.ts';
import { uprightLine } from './upright-line.ts';

/** The greatest thickness of a straight strip that goes into one opening, against its height. */
export interface ThicknessCurve {
  readonly openingId: string;
  /** Greatest tilt of the strip either way, radians; 0: it stands upright. */
  readonly tiltLimit: number;
  /**
   * Height ascending from 0, thickness falling. Between two knots the thickness is linear; at a jump two knots share a
   * height, and the greater thickness belongs to it (touching is allowed). Nothing taller than the last knot goes in.
   */
  readonly knots: readonly CurveKnot[];
  /**
   * 0 upright: exact. With tilt, every strip of the curve goes in, and none that is at least 0.05 mm tall goes in taller and
   * thicker than the curve by more than this. Nanometres.
   */
  readonly accuracy: number;
}

/**
 * The exact curve of an opening for strips that stand upright.
 *
 * @param outline a simple polygon, nanometres.
 * @check tests/unit/gauge/upright-curve.test.ts, tests/outside/gauge-closed-forms.test.ts
 */
export function uprightCurve(openingId: string, outline: readonly Point[]): ThicknessCurve {
  return { openingId, tiltLimit: 0, knots: knotsOf(uprightLine(outline)), accuracy: 0 };
}

/**
 * The curve of an opening for strips that may be tilted, step by step; exact where the limit is 0.
 *
 * @param tiltLimit greatest tilt either way, radians.
 * @yields how much of the work is done.
 * @accuracy {@link TILTED_ACCURACY} with tilt; never below the upright curve.
 * @check tests/outside/gauge-closed-forms.test.ts, tests/laws/gauge.test.ts
 */
export function* findingCurve(
  openingId: string,
  outline: readonly Point[],
  tiltLimit: number,
): Generator<{ done: number; total: number }, ThicknessCurve, void> {
  if (tiltLimit <= 0) return uprightCurve(openingId, outline);
  const line = yield* tiltedLine(outline, tiltLimit);
  return { openingId, tiltLimit, knots: knotsOf(line), accuracy: TILTED_ACCURACY };
}

/** The thickest strip of a height that goes in, nanometres; 0 where none so tall does. */
export function thicknessAt({ knots }: Pick<ThicknessCurve, 'knots'>, height: number): number {
  return thicknessOf(knots, height);
}

/** How tall a strip that is next to nothing thick may be, nanometres. */
export function tallestOf({ knots }: Pick<ThicknessCurve, 'knots'>): number {
  return knots.at(-1)?.height ?? 0;
}

/** A straight strip, nanometres. */
export interface Strip {
  readonly thickness: number;
  readonly height: number;
}

/**
 * By how much a strip could be thicker and still go in, nanometres: 0 where it touches on both sides, below 0 where it
 * is too thick by so much.
 */
export function spareOf(curve: Pick<ThicknessCurve, 'knots'>, { thickness, height }: Strip): number {
  return thicknessAt(curve, height) - thickness;
}

/** The tallest strip of a thickness that goes in, nanometres; null where none is so thick. */
export function heightAt({ knots }: Pick<ThicknessCurve, 'knots'>, thickness: number): number | null {
  for (let i = knots.length - 1; i >= 0; i--) {
    const { height, thickness: at } = knots[i];
    if (at < thickness) continue;
    const next = knots[i + 1];
    if (!next || next.height === height) return height;
    return height + ((next.height - height) * (at - thickness)) / (at - next.thickness);
  }
  return null;
}
