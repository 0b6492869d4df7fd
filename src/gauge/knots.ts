import type { FallingLine } from './falling-line.ts';

/** A corner of a curve: a strip of this height and thickness goes in. Nanometres. */
export interface CurveKnot {
  readonly height: number;
  readonly thickness: number;
  /** The tilt at which the strips up to this knot, from the one before, go in; radians, counter-clockwise; 0 where not given. */
  readonly tilt?: number;
}

/** Corners of a falling curve, height ascending; see {@link ThicknessCurve}. */
export type Knots = readonly CurveKnot[];

/** The knots of a line whose marks are tilts. */
export function knotsOf({ heights, thicknesses, marks }: FallingLine): CurveKnot[] {
  return heights.map((height, i) => {
    const knot = { height, thickness: thicknesses[i] };
    return marks[i] === 0 ? knot : { ...knot, tilt: marks[i] };
  });
}

/** The line through some knots, one mark on all its pieces. */
export function lineOfKnots(knots: Knots, mark: number): FallingLine {
  return {
    heights: knots.map(({ height }) => height),
    thicknesses: knots.map(({ thickness }) => thickness),
    marks: knots.map(() => mark),
  };
}

/** The number of the first knot that is at least so tall; the number of knots where none is. */
export function knotFrom(knots: Knots, height: number): number {
  let [from, to] = [0, knots.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (knots[middle].height >= height) to = middle;
    else from = middle + 1;
  }
  return from;
}

/** The thickness at a height, the greater one at a jump; 0 above the tallest. */
export function thicknessOf(knots: Knots, height: number): number {
  const k = knotFrom(knots, height);
  if (k === knots.length) return 0;
  if (k === 0 || knots[k].height === height) return knots[k].thickness;
  const [a, b] = [knots[k - 1], knots[k]];
  return a.thickness + ((b.thickness - a.thickness) * (height - a.height)) / (b.height - a.height);
}
