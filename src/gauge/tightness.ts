import { type ThicknessCurve, tallestOf, thicknessAt } from './thickness-curve.ts';

/** How tight an opening is, among others; lengths in nanometres. */
export interface Tightness {
  readonly openingId: string;
  /** 1 for the tightest; equally tight ones share a rank. */
  readonly rank: number;
  /** What it is ranked by. */
  readonly measure: number;
  /** The thickest strip of any height: its widest level stretch. */
  readonly thickest: number;
  /** The tallest strip, however thin. */
  readonly tallest: number;
  /** The mean over all heights up to the tallest strip of any of the openings. */
  readonly mean: number;
}

/** What openings are ranked by: the thickest strip of one height, or the mean over all heights. */
export type TightnessMeasure = { readonly by: 'height'; readonly height: number } | { readonly by: 'mean' };

/** Measures nearer to each other than this are the same, nanometres. */
const SAME = 0.5;

/**
 * Openings from the tightest on. At a height the measure is the thickest strip of that height that goes in. Over all
 * heights it is the mean of that thickness from 0 to the tallest strip that enters any of the openings, 0 where nothing goes
 * in: the area under the curve over a height that is the same for all. Equally tight ones keep their order. Those
 * of tilted curves share a rank where they are nearer to each other than such curves are found.
 *
 * @check tests/unit/gauge/tightness.test.ts
 */
export function rankTightness(curves: readonly ThicknessCurve[], measure: TightnessMeasure): Tightness[] {
  const upTo = Math.max(0, ...curves.map(tallestOf));
  const rows = curves.map((curve) => {
    const mean = upTo === 0 ? 0 : areaUnder(curve) / upTo;
    const measured = measure.by === 'mean' ? mean : thicknessAt(curve, measure.height);
    const [thickest, tallest] = [thicknessAt(curve, 0), tallestOf(curve)];
    return { openingId: curve.openingId, measure: measured, thickest, tallest, mean };
  });
  rows.sort((a, b) => a.measure - b.measure);
  const same = Math.max(SAME, ...curves.map(({ accuracy }) => accuracy));
  return withRanks(rows, ({ measure }) => measure, same);
}

/**
 * Rows with their ranks from 1 on; those no more than `same` above the first of a rank share it.
 *
 * @param rows the least first.
 */
export function withRanks<Row>(rows: readonly Row[], measure: (row: Row) => number, same = SAME) {
  let rank = 0;
  return rows.map((row, i) => {
    if (i === 0 || measure(row) - measure(rows[rank - 1]) > same) rank = i + 1;
    return { ...row, rank };
  });
}

/** The area under a curve, square nanometres. */
export function areaUnder({ knots }: Pick<ThicknessCurve, 'knots'>): number {
  return knots.reduce((sum, knot, i) => {
    const before = knots[i - 1] ?? { height: 0, thickness: knot.thickness };
    return sum + ((knot.height - before.height) * (knot.thickness + before.thickness)) / 2;
  }, 0);
}

/** What a measure means, in one sentence for the reader. */
export function measureWords(measure: TightnessMeasure, height: (nm: number) => string): string {
  if (measure.by === 'height')
    return `By the thickest straight strip ${height(measure.height)} tall that goes in: the thinner, the tighter.`;
  return 'By the mean thickness of the strips that go in, over all heights up to the tallest strip that enters any keyway.';
}
