import { boxOf, type Point } from '../geom/point.ts';
import { type FallingLine, higherOf, isPieceUnder, isUnder } from './falling-line.ts';
import { type InnerWalls, leaningBest } from './leaning-stance.ts';
import { type VisitStance, visitStances } from './stances.ts';
import { type Trapezoid, trapezoidsOf } from './trapezoids.ts';
import { turnedAbout } from './turn-points.ts';
import { bestOf, highest, thicknessBound, uprightLine } from './upright-line.ts';

/** How close a tilted line is, nanometres. */
export const TILTED_ACCURACY = 1_000;

/** A little less, so that the rounding of corners keeps within it. */
const SLACK = TILTED_ACCURACY - 2;

/** Strips at least so tall are bounded, nanometres. */
const LEAST_HEIGHT = 50_000;

/** What would raise the line by less than this is left out, nanometres: else it would have thousands of corners. */
const LEAST_GAIN = 300;

/** Wider ranges of tilts are hardly ever done with: half the width of the first ones at most, radians. */
const FIRST_HALF = 0.003;

/** A range of tilts: its middle and half its width, radians. */
interface TiltRange {
  readonly middle: number;
  readonly half: number;
}

/**
 * The greatest thickness of a strip that may be tilted by up to `limit` either way, against its height.
 *
 * Branch and bound over the tilt. Where a strip of thickness w and height h leans by d, the opening has both its long
 * sides at all levels of v = h cos d - w sin d. A wall on the left and one on the right within these levels, D apart in
 * height, leave a gap W >= w / cos d - D tan d: so what stands at the middle of a range of tilts bounds all strips of the
 * range ({@link leaningBest}) that are taller than v = 0 asks for. A range is done with when that bound lies nowhere above
 * the line that is known by more than {@link TILTED_ACCURACY}; else it is halved. Walls that hold a strip near to each
 * other bound wide ranges; with the whole height in place of D it took five times as many. Most stances are done with by
 * one corner of theirs, many together, without a look at their walls.
 *
 * @param outline a simple polygon, nanometres.
 * @param limit radians, above 0.
 * @yields how much of the tilts is done with.
 * @returns the line; marks are the tilts at which its strips go in, counter-clockwise.
 * @accuracy every strip of the line goes in; at no tilt one that is taller and thicker by more than {@link TILTED_ACCURACY},
 *   of strips that are at least 0.05 mm tall.
 * @check tests/outside/gauge-closed-forms.test.ts, tests/laws/gauge.test.ts
 */
export function* tiltedLine(
  outline: readonly Point[],
  limit: number,
): Generator<{ done: number; total: number }, FallingLine, void> {
  const total = 2 * limit;
  let line = uprightLine(outline);
  for (const tilt of [-limit, limit]) {
    line = higherOf(line, uprightLine(turnedAbout(outline, -tilt), tilt));
    yield { done: 0, total };
  }
  let done = 0;
  const count = Math.ceil(limit / FIRST_HALF);
  const first = limit / count;
  let open = Array.from({ length: count }, (_, i): TiltRange => ({ middle: (2 * i + 1) * first - limit, half: first }));
  while (open.length > 0) {
    const next: TiltRange[] = [];
    for (const range of open) {
      const { middle, half } = range;
      const looked = lookAt(outline, range, line);
      line = looked.line;
      if (looked.bounded) done += 2 * half;
      else next.push({ middle: middle - half / 2, half: half / 2 }, { middle: middle + half / 2, half: half / 2 });
      yield { done: Math.min(done, total), total };
    }
    open = next;
  }
  return line;
}

/** Looks at the middle of a range: the line with what goes in there, and whether it bounds the whole range. */
function lookAt(
  outline: readonly Point[],
  { middle, half }: TiltRange,
  known: FallingLine,
): { line: FallingLine; bounded: boolean } {
  const lean = leaning(half);
  const upright = turnedAbout(outline, -middle);
  const { minX, maxX, minY, maxY } = boxOf(upright);
  const gains: FallingLine[] = [];
  const near: NearStance[] = [];
  const under = underSteps(known, maxY - minY);
  const look: VisitStance = (foot, head, left, right, atLeft, atRight, between) => {
    const height = head.high - foot.low;
    const thickness = thicknessBound(foot, head, left, right) + height * lean.tangent;
    const most = Math.min(between, widestOf(foot), widestOf(head), thickness);
    const tall = lean.height(height, most);
    if (most <= 0) return true;
    if (under(tall, most)) return !under(lean.height(maxY - foot.low, between), between);
    if (isUnder(known, SLACK, tall, most)) return true;
    const best = bestOf(foot, head, left, right, middle);
    if (!isBoundedBy(known, LEAST_GAIN, best, STEADY)) gains.push(best);
    near.push({ foot, head, inner: foot === head ? null : { left, atLeft, right, atRight }, best });
    return true;
  };
  visitStances(trapezoidsOf(upright), look, Infinity, lean.tangent);
  const line = gains.length === 0 ? known : higherOf(known, highest(gains));
  const tallEnough = (maxX - minX) * lean.tangent <= LEAST_HEIGHT;
  return { line, bounded: tallEnough && near.every((stance) => isStanceBounded(line, stance, lean)) };
}

/** A stance that no corner of it does away with, and the best of it at the middle of the range. */
interface NearStance {
  readonly foot: Trapezoid;
  readonly head: Trapezoid;
  readonly inner: InnerWalls | null;
  readonly best: FallingLine;
}

/** Whether all strips of a stance that lean lie under a line: by the whole height between all walls, or else wall by wall. */
function isStanceBounded(known: FallingLine, { foot, head, inner, best }: NearStance, lean: Leaning): boolean {
  const { heights, thicknesses, marks } = best;
  // Where its walls pass each other, the best line ends at 0 and bounds none that leans.
  if ((thicknesses.at(-1) ?? 0) > 0) {
    const leant = { heights, thicknesses: thicknesses.map((gap, i) => gap + heights[i] * lean.tangent), marks };
    if (isBoundedBy(known, SLACK, leant, lean)) return true;
  }
  return isBoundedBy(known, SLACK, leaningBest(foot, head, inner, lean.tangent), lean);
}

/** How many steps of height a line is looked up by. */
const STEPS = 512;

/** A quick look whether a strip lies under a line: never yes where it does not. */
function underSteps(line: FallingLine, height: number): (height: number, thickness: number) => boolean {
  const step = height / STEPS;
  const least = new Float64Array(STEPS + 2);
  for (let i = 0, k = 0; i <= STEPS + 1; i++) {
    while (k < line.heights.length && line.heights[k] < i * step) k++;
    // The corner that ends the piece is as low as the line gets on it.
    least[i] = line.thicknesses[k] ?? 0;
  }
  return (tall, thickness) => tall <= height && thickness <= least[Math.ceil(tall / step)];
}

/** The widest level stretch of a part of the opening. */
function widestOf({ left0, left1, right0, right1 }: Trapezoid): number {
  return Math.max(right0 - left0, right1 - left1);
}

/** How far a strip leans at most, and what that makes of its height. */
interface Leaning {
  readonly tangent: number;
  /** Its greatest height, if it is so thick and both its sides have so much height in common: by h = (v + w sin d) / cos d. */
  height(common: number, thickness: number): number;
}

function leaning(angle: number): Leaning {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { tangent: s / c, height: (common, thickness) => (common + thickness * s) / c };
}

/** Strips that do not lean. */
const STEADY = leaning(0);

/** Whether strips that lean lie under a line, within a slack. */
function isBoundedBy(known: FallingLine, slack: number, { heights, thicknesses }: FallingLine, lean: Leaning): boolean {
  for (let i = 0; i < heights.length; i++) {
    const k = Math.min(i + 1, heights.length - 1);
    const [h0, h1] = [lean.height(heights[i], thicknesses[i]), lean.height(heights[k], thicknesses[k])];
    if (!isPieceUnder(known, slack, h0, thicknesses[i], h1, thicknesses[k])) return false;
  }
  return true;
}
