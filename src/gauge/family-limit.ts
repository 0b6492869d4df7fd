import { lowerOf } from './falling-line.ts';
import { type Knots, lineOfKnots, thicknessOf } from './knots.ts';
import { type ThicknessCurve, thicknessAt } from './thickness-curve.ts';

/** An opening that sets the limit from a height on, nanometres. */
export interface JoiningOpening {
  readonly openingId: string;
  readonly from: number;
}

/** A stretch of heights over which the same openings set the limit; nanometres. */
export interface LimitStretch {
  /** All that set it alike from one end to the other, in their order; at least one. */
  readonly openingIds: readonly string[];
  /** Those that set it too from a height within the stretch to its end, while the limit stays level; height ascending. */
  readonly joining: readonly JoiningOpening[];
  readonly from: number;
  readonly to: number;
}

/** The family's own limit: the thickest strip of each height that enters every opening. */
export interface FamilyLimit {
  /** As of a curve; nothing taller than the last knot enters all. */
  readonly knots: Knots;
  /** Who sets it, height ascending, from 0 to the tallest. */
  readonly stretches: readonly LimitStretch[];
}

/**
 * The lower envelope of some curves: the thickest strip that enters them all, and who sets it.
 *
 * @check tests/laws/gauge.test.ts
 */
export function envelopeOf(curves: readonly ThicknessCurve[]): FamilyLimit {
  const [first, ...others] = curves.map(({ knots }, of) => lineOfKnots(knots, of));
  if (!first) return { knots: [], stretches: [] };
  const { heights, thicknesses } = others.reduce((a, b) => lowerOf(a, b), first);
  const knots = heights.map((height, i) => ({ height, thickness: thicknesses[i] }));
  return { knots, stretches: stretchesOf(knots, curves) };
}

/** Stretches shorter than this are not told apart from the next, nanometres. */
const SHORT = 1_000;

/** Heights nearer to each other than this are the same, nanometres: where a curve falls steeply its thickness does not tell. */
const SAME_HEIGHT = 1;

/**
 * Between the corners of the limit and of the curves that ever set it the same ones do, so one look in each middle tells. Where
 * others join or leave while the limit stays level, those are told that set it all along.
 */
function stretchesOf(limit: Knots, curves: readonly ThicknessCurve[]): LimitStretch[] {
  const setsAt = ({ knots }: ThicknessCurve, height: number) =>
    thicknessOf(knots, height + SAME_HEIGHT) <= thicknessOf(limit, height) + SAME;
  const setters = curves.filter((curve) =>
    piecesOf([limit, curve.knots], limit).some(([from, to]) => setsAt(curve, (from + to) / 2)),
  );
  const stretches: LimitStretch[] = [];
  for (const [from, to] of piecesOf([limit, ...setters.map(({ knots }) => knots)], limit)) {
    const middle = (from + to) / 2;
    const found = setters.filter((curve) => setsAt(curve, middle)).map(({ openingId }) => openingId);
    // One that sets less than is told apart may have its middle here.
    const openingIds = found.length > 0 ? found : thinnestAt(curves, middle);
    const last = stretches.at(-1);
    const allAlong = last?.openingIds.filter((id) => openingIds.includes(id)) ?? [];
    const known = [...allAlong, ...(last?.joining ?? []).map(({ openingId }) => openingId)];
    const joining = openingIds.filter((id) => !known.includes(id)).map((openingId) => ({ openingId, from }));
    const isSame = allAlong.length === openingIds.length && allAlong.length === last?.openingIds.length;
    const isLevel = last && thicknessOf(limit, last.to) - thicknessOf(limit, to) <= SAME;
    if (last && (isSame || (isLevel && allAlong.length > 0)))
      stretches[stretches.length - 1] = {
        openingIds: allAlong,
        joining: [...last.joining, ...joining],
        from: last.from,
        to,
      };
    else stretches.push({ openingIds, joining: [], from, to });
  }
  return stretches;
}

/** The heights from 0 to the tallest of the limit, parted at the corners of some curves. */
function piecesOf(curves: readonly Knots[], limit: Knots): (readonly [number, number])[] {
  const tallest = limit.at(-1)?.height ?? 0;
  const heights = [...new Set(curves.flatMap((knots) => knots.map(({ height }) => height)))].sort((a, b) => a - b);
  const ends = [0];
  for (const height of heights)
    if (height < tallest - SHORT && height > ends[ends.length - 1] + SHORT) ends.push(height);
  return tallest > 0 ? [...ends, tallest].slice(1).map((to, i) => [ends[i], to]) : [];
}

/** Thicknesses nearer to each other than this are the same, nanometres. */
const SAME = 0.5;

/**
 * The openings that set the limit at a height: all whose thickest strip is the least; all that let none in where it is 0. Those
 * come first that set it over the whole stretch.
 *
 * @param limit of the same curves.
 * @check tests/unit/gauge/family-limit.test.ts
 */
export function settersAt(
  curves: readonly ThicknessCurve[],
  height: number,
  limit: FamilyLimit = envelopeOf(curves),
): string[] {
  const thinnest = thinnestAt(curves, height);
  const stretch = limit.stretches.find(({ to }) => height <= to);
  const allAlong = thinnest.filter((id) => stretch?.openingIds.includes(id));
  return [...allAlong, ...thinnest.filter((id) => !allAlong.includes(id))];
}

/** All whose thickest strip of a height is the least. */
function thinnestAt(curves: readonly ThicknessCurve[], height: number): string[] {
  const least = Math.min(...curves.map((curve) => thicknessAt(curve, height)));
  return curves.filter((curve) => thicknessAt(curve, height) <= least + SAME).map(({ openingId }) => openingId);
}
