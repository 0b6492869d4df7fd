import { type FallingLine, lowerOf } from './falling-line.ts';
import { type CurveKnot, lineOfKnots } from './knots.ts';
import { type ThicknessCurve, thicknessAt } from './thickness-curve.ts';

/** A corner of the family's limit, with the opening that sets the piece which ends here. */
export interface LimitKnot extends CurveKnot {
  readonly openingId: string;
}

/** A stretch of heights over which one opening sets the limit; nanometres. */
export interface LimitStretch {
  readonly openingId: string;
  readonly from: number;
  readonly to: number;
}

/** The family's own limit: the thickest strip of each height that enters every opening. */
export interface FamilyLimit {
  /** As of a curve; nothing taller than the last knot enters all. */
  readonly knots: readonly LimitKnot[];
  /** Who sets it, height ascending, from 0 to the tallest. */
  readonly stretches: readonly LimitStretch[];
}

/**
 * The lower envelope of some curves: the thickest strip that enters them all, and who sets it. Where several openings set
 * it alike, the first of them is told; {@link settersAt} names all.
 *
 * @check tests/laws/gauge.test.ts
 */
export function envelopeOf(curves: readonly ThicknessCurve[]): FamilyLimit {
  const lines = curves.map((curve, of) => lineOfKnots(curve.knots, of));
  const knots =
    lines.length === 0
      ? []
      : knotsOfLimit(
          lines.reduce((a, b) => lowerOf(a, b)),
          curves,
        );
  const stretches: LimitStretch[] = [];
  for (const [i, { height: to, openingId }] of knots.entries()) {
    const from = knots[i - 1]?.height ?? 0;
    const last = stretches.at(-1);
    if (to === from) continue;
    if (last?.openingId === openingId) stretches[stretches.length - 1] = { ...last, to };
    else stretches.push({ openingId, from, to });
  }
  return { knots, stretches };
}

/** The knots of a line whose marks are numbers of curves. */
function knotsOfLimit({ heights, thicknesses, marks }: FallingLine, curves: readonly ThicknessCurve[]): LimitKnot[] {
  return heights.map((height, i) => ({
    height,
    thickness: thicknesses[i],
    openingId: curves[marks[i]].openingId,
  }));
}

/** Thicknesses nearer to each other than this are the same, nanometres. */
const SAME = 0.5;

/** The openings that set the limit at a height: all whose thickest strip is the least; all that let none in where it is 0. */
export function settersAt(curves: readonly ThicknessCurve[], height: number): string[] {
  const least = Math.min(...curves.map((curve) => thicknessAt(curve, height)));
  return curves.filter((curve) => thicknessAt(curve, height) <= least + SAME).map(({ openingId }) => openingId);
}
