/** A corner of a curve: a strip of this height and thickness goes in. Nanometres. */
export interface CurveKnot {
  readonly height: number;
  readonly thickness: number;
  /** The tilt at which the strips up to this knot, from the one before, go in; radians, counter-clockwise; 0 where not given. */
  readonly tilt?: number;
}

/** Corners of a falling curve, height ascending; see {@link ThicknessCurve}. */
export type Knots = readonly CurveKnot[];

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
  return between(knots[k - 1], knots[k], height);
}

/** The thickness on the line through two knots of different height. */
export function between(a: CurveKnot, b: CurveKnot, height: number): number {
  return a.thickness + ((b.thickness - a.thickness) * (height - a.height)) / (b.height - a.height);
}

/** Corners that lie nearer to the line through their neighbours than this are none, nanometres. */
const IN_LINE = 1e-4;

/** Takes out knots that are in line with their neighbours, if they are of one tilt, and repeats. */
export function tidyKnots<Knot extends CurveKnot>(knots: readonly Knot[], same: (a: Knot, b: Knot) => boolean): Knot[] {
  const kept: Knot[] = [];
  for (const knot of knots) {
    const last = kept.at(-1);
    if (last && last.height === knot.height && last.thickness === knot.thickness) continue;
    for (let b = kept.at(-1), a = kept.at(-2); a && b && same(b, knot) && inLine(a, b, knot); ) {
      kept.pop();
      b = kept.at(-1);
      a = kept.at(-2);
    }
    kept.push(knot);
  }
  return kept;
}

function inLine(a: CurveKnot, b: CurveKnot, c: CurveKnot): boolean {
  const [ux, uy] = [c.height - a.height, c.thickness - a.thickness];
  const length = Math.hypot(ux, uy);
  if (length === 0) return true;
  return Math.abs(ux * (b.thickness - a.thickness) - uy * (b.height - a.height)) <= IN_LINE * length;
}

/** Rounds to a thousandth of a nanometre, so that a jump lies where the outline's whole nanometres put it. */
export function rounded(nm: number): number {
  return Math.round(nm * 1e3) / 1e3;
}
