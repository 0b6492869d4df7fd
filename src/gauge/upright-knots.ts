import { boxOf, type Point } from '../geom/point.ts';
import { higherOf } from './combine-knots.ts';
import { type CurveKnot, type Knots, rounded } from './knots.ts';
import { type Stance, thicknessBetween, visitCorners, visitStances } from './stances.ts';
import { trapezoidsOf } from './trapezoids.ts';

/**
 * The exact greatest thickness of an upright strip inside an outline, against its height.
 *
 * A strip from one height to another goes into the opening where the erosion of the opening by an upright segment of its
 * height holds a level segment of its thickness. For ends in two given trapezoids the thickness is the least of linear
 * functions of both ends, so the best for each height is a concave chain through corners where walls change
 * ({@link visitCorners}); the curve is the highest of all those chains.
 *
 * @param outline a simple polygon, nanometres, fractions allowed.
 * @returns knots of a falling curve from height 0, rounded to a thousandth of a nanometre.
 * @check tests/unit/gauge/upright-curve.test.ts
 */
export function uprightKnots(outline: readonly Point[]): Knots {
  const box = boxOf(outline);
  const known = new KnownStrips(box.maxY - box.minY);
  const stances: Stance[] = [];
  visitStances(trapezoidsOf(outline), (stance) => {
    stances.push(stance);
    known.learn(stance);
  });
  const stairs = known.settle();
  const chains = stances.filter((stance) => !known.beats(stance)).map(chainOf);
  return highest([stairs, ...chains.filter((chain) => chain.length > 0)]);
}

/** How many steps of height strips are kept by. */
const STEPS = 512;

/** Strips that are known to go in, to leave out stances that have none better. */
class KnownStrips {
  /** The thickest strip known of each step of height, and its height. */
  private readonly own = new Float64Array(STEPS + 1);
  private readonly heights = new Float64Array(STEPS + 1);
  /** The thickest strip known that is at least so tall. */
  private readonly thickest = new Float64Array(STEPS + 2);
  private readonly step: number;

  constructor(height: number) {
    this.step = height / STEPS;
  }

  /** Keeps the strips that end at the ends of both parts. */
  learn(stance: Stance): void {
    const { foot, head } = stance;
    this.keep(head.high - foot.low, thicknessBetween(stance, foot.low, head.high));
    if (foot === head) return;
    this.keep(head.low - foot.low, thicknessBetween(stance, foot.low, head.low));
    this.keep(head.high - foot.high, thicknessBetween(stance, foot.high, head.high));
    this.keep(head.low - foot.high, stance.right - stance.left);
  }

  private keep(height: number, thickness: number): void {
    const at = Math.min(STEPS, Math.floor(height / this.step));
    if (thickness <= this.own[at]) return;
    this.own[at] = thickness;
    this.heights[at] = height;
  }

  /**
   * What goes in tall goes in short as well. To be called once all is learnt.
   *
   * @returns the known strips as a falling curve in steps.
   */
  settle(): Knots {
    const stairs: CurveKnot[] = [];
    for (let at = STEPS; at >= 0; at--) {
      const [height, thickness] = [rounded(this.heights[at]), rounded(this.own[at])];
      const taller = stairs.at(-1);
      this.thickest[at] = Math.max(this.own[at], this.thickest[at + 1]);
      if (thickness <= (taller?.thickness ?? 0)) continue;
      if (taller) stairs.push({ height, thickness: taller.thickness });
      stairs.push({ height, thickness });
    }
    return stairs.reverse();
  }

  /** Whether a strip is known that is at least as tall and as thick as any of the stance. */
  beats({ foot, head, left, right }: Stance): boolean {
    const least = Math.max(left, Math.min(foot.left0, foot.left1), Math.min(head.left0, head.left1));
    const most = Math.min(right, Math.max(foot.right0, foot.right1), Math.max(head.right0, head.right1));
    const at = Math.ceil((head.high - foot.low) / this.step);
    return at <= STEPS && this.thickest[at] >= most - least;
  }
}

/** The best of one stance for each height: a concave falling chain, the thickest first; empty where nothing passes. */
function chainOf(stance: Stance): Knots {
  const found: CurveKnot[] = [];
  visitCorners(stance, (height, thickness) => {
    found.push({ height: rounded(height), thickness: rounded(thickness) });
  });
  found.sort((a, b) => b.height - a.height || b.thickness - a.thickness);
  const hull: CurveKnot[] = [];
  for (const knot of found) {
    if (hull.length > 0 && knot.thickness <= hull[hull.length - 1].thickness) continue;
    while (hull.length > 1 && !turnsDown(hull[hull.length - 2], hull[hull.length - 1], knot)) hull.pop();
    hull.push(knot);
  }
  return aboveNothing(hull.reverse());
}

/** Whether b stands above the line from a (taller) to c (thicker). */
function turnsDown(a: CurveKnot, b: CurveKnot, c: CurveKnot): boolean {
  return (b.height - a.height) * (c.thickness - a.thickness) - (b.thickness - a.thickness) * (c.height - a.height) < 0;
}

/** The part of a chain where the thickness is above 0, down to there. */
function aboveNothing(chain: Knots): Knots {
  const end = chain.findIndex((knot) => knot.thickness <= 0);
  if (end < 0) return chain;
  if (end === 0) return [];
  const [a, b] = [chain[end - 1], chain[end]];
  const height = a.height + ((b.height - a.height) * a.thickness) / (a.thickness - b.thickness);
  return [...chain.slice(0, end), { height: rounded(height), thickness: 0 }];
}

/** The highest of many chains, joined two by two. */
function highest(chains: readonly Knots[]): Knots {
  let row = chains;
  if (row.length === 1) return higherOf(row[0], []);
  while (row.length > 1) {
    const next: Knots[] = [];
    for (let i = 0; i < row.length; i += 2) next.push(i + 1 < row.length ? higherOf(row[i], row[i + 1]) : row[i]);
    row = next;
  }
  return row[0];
}
