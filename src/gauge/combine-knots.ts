import { between, type CurveKnot, rounded, tidyKnots } from './knots.ts';

/** A corner of the lower of several curves, with the number of the curve that gives the piece which ends here. */
export interface LowerKnot extends CurveKnot {
  readonly of: number;
}

/** Whether the first of two thicknesses at one height is the wanted one. */
type Choice = (first: number, second: number) => boolean;

/** The higher of two falling curves at each height. Below its first knot a curve is level, above its last one 0. */
export function higherOf<Knot extends CurveKnot>(a: readonly Knot[], b: readonly Knot[]): Knot[] {
  const pieces = chosenPieces(a, b, Math.max(tallest(a), tallest(b)), (first, second) => first >= second);
  return tidyKnots(pieces, (p, q) => (p.tilt ?? 0) === (q.tilt ?? 0));
}

/**
 * The lowest of some curves at each height; where several are equally low, the first of them gives it.
 *
 * @returns empty where there is no curve.
 */
export function lowestOf(curves: readonly (readonly CurveKnot[])[]): LowerKnot[] {
  const [first, ...others] = curves.map((knots, of) => knots.map((knot): LowerKnot => ({ ...knot, of })));
  if (!first) return [];
  return others.reduce((a, b) => {
    const pieces = chosenPieces(a, b, Math.min(tallest(a), tallest(b)), (x, y) => x <= y);
    return tidyKnots(pieces, (p, q) => p.of === q.of);
  }, first);
}

function tallest(knots: readonly CurveKnot[]): number {
  return knots.at(-1)?.height ?? 0;
}

/** The corners of two curves up to a height, of the chosen one at each height; those of a piece bear its marks. */
function chosenPieces<Knot extends CurveKnot>(
  a: readonly Knot[],
  b: readonly Knot[],
  upTo: number,
  choose: Choice,
): Knot[] {
  const heights = [...new Set([0, ...a.map((k) => k.height), ...b.map((k) => k.height), upTo])]
    .filter((height) => height <= upTo)
    .sort((x, y) => x - y);
  const [first, second] = [new CurveWalk(a), new CurveWalk(b)];
  const knots: Knot[] = [];
  for (let i = 0; i + 1 < heights.length; i++) {
    const [from, to] = [heights[i], heights[i + 1]];
    const [p, q] = [first.over(from, to), second.over(from, to)];
    if (p && q) pushChosen(knots, p, q, choose);
    else if (p ?? q) knots.push(...((p ?? q) as Stretch<Knot>));
  }
  return knots;
}

/** A straight piece of a curve: its two ends, both with the marks of the piece. */
type Stretch<Knot> = readonly [Knot, Knot];

/** The chosen one of two curves over a stretch of heights where both are straight; parted where they cross. */
function pushChosen<Knot extends CurveKnot>(knots: Knot[], a: Stretch<Knot>, b: Stretch<Knot>, choose: Choice): void {
  const apart = [a[0].thickness - b[0].thickness, a[1].thickness - b[1].thickness];
  const before = choose(a[0].thickness, b[0].thickness) ? a : b;
  const after = choose(a[1].thickness, b[1].thickness) ? a : b;
  if (before === after || apart[1] === 0) knots.push(...before);
  else if (apart[0] === 0) knots.push(...after);
  else {
    const [from, to] = [a[0].height, a[1].height];
    const height = rounded(from + ((to - from) * apart[0]) / (apart[0] - apart[1]));
    if (height <= from) knots.push(...after);
    else if (height >= to) knots.push(...before);
    else {
      const [x, y] = [between(a[0], a[1], height), between(b[0], b[1], height)];
      const thickness = rounded(choose(x, y) ? x : y);
      knots.push(before[0], { ...before[1], height, thickness }, { ...after[0], height, thickness }, after[1]);
    }
  }
}

/** Reads a curve in stretches of rising height. */
class CurveWalk<Knot extends CurveKnot> {
  private next = 0;
  private readonly knots: readonly Knot[];

  constructor(knots: readonly Knot[]) {
    this.knots = knots;
  }

  /** The curve just above `from` and at `to`, between which it has no knot; null above its end. */
  over(from: number, to: number): Stretch<Knot> | null {
    const { knots } = this;
    while (this.next < knots.length && knots[this.next].height <= from) this.next++;
    const end = knots[this.next];
    if (!end) return null;
    const start = knots[this.next - 1];
    const at = (height: number): Knot => {
      const level = !start || height === end.height;
      return { ...end, height, thickness: level ? end.thickness : rounded(between(start, end, height)) };
    };
    return [at(from), at(to)];
  }
}
