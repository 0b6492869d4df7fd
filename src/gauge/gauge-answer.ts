import type { Verdict } from '../fit/fit.ts';
import type { Point } from '../geom/point.ts';
import { type FamilyLimit, settersAt } from './family-limit.ts';
import { type Pinch, pinchOnCurve } from './pinch.ts';
import { type ThicknessCurve, tallestOf, thicknessAt } from './thickness-curve.ts';

/** An opening that sets a limit, and where in it. */
export interface Setter {
  readonly openingId: string;
  /** Null where nothing so tall goes in. */
  readonly pinch: Pinch | null;
  /** Heights of the two places that hold the strip, left and right, above the keyway's lowest point; nanometres. */
  readonly heights: readonly [number, number] | null;
}

/** What a family says to a strip of a height; lengths in nanometres. */
export interface GaugeAnswer {
  readonly height: number;
  /** Ids of all openings asked about, in their order. */
  readonly openings: readonly string[];
  /** The thickest strip of the height that enters all of them; 0 where there is none. */
  readonly thickest: number;
  /** Who sets that, in their order; empty where there are no openings. */
  readonly setters: readonly Setter[];
  /** The tallest strip, however thin, that enters all. */
  readonly tallest: number;
  /** What becomes of a given thickness, where one is given. */
  readonly asked?: AskedThickness;
}

/** What a strip of the height and a given thickness does in each opening. */
export interface AskedThickness {
  readonly thickness: number;
  /** By the opening's id, in their order; {@link judgeStrip}. */
  readonly verdicts: ReadonlyMap<string, Verdict>;
}

/**
 * The thickest strip of a height that enters all openings, in contact, who sets it and where, and what a given thickness
 * does in each of them.
 *
 * @param outlineOf the outline of an opening by its id.
 * @param asked left out where no thickness is asked about.
 * @param limit of the curves, where it is known already.
 * @check tests/unit/gauge/gauge-answer.test.ts
 */
export function gaugeAnswer(
  curves: readonly ThicknessCurve[],
  outlineOf: (openingId: string) => readonly Point[],
  height: number,
  asked?: AskedThickness,
  limit?: FamilyLimit,
): GaugeAnswer {
  const openings = curves.map(({ openingId }) => openingId);
  const least = (values: number[]) => (values.length === 0 ? 0 : Math.min(...values));
  const setters = settersAt(curves, height, limit).flatMap((id) => {
    const curve = curves.find(({ openingId }) => openingId === id);
    return curve ? [setterOf(curve, outlineOf(id), height)] : [];
  });
  return {
    height,
    openings,
    thickest: least(curves.map((curve) => thicknessAt(curve, height))),
    setters,
    tallest: least(curves.map(tallestOf)),
    ...(asked && { asked }),
  };
}

function setterOf(curve: ThicknessCurve, outline: readonly Point[], height: number): Setter {
  const pinch = pinchOnCurve(curve, outline, height);
  return { openingId: curve.openingId, pinch, heights: pinch && heldHeights(pinch, outline) };
}

/** Heights of the two places that hold a strip, left and right, above the lowest point of its opening; nanometres. */
export function heldHeights({ across }: Pinch, outline: readonly Point[]): readonly [number, number] {
  const floor = outline.reduce((least, p) => Math.min(least, p.y), Infinity);
  return [across[0].y - floor, across[1].y - floor];
}
