import { boxOf, type Point } from '../geom/point.ts';
import { aboveNothing, type FallingLine, higherOf, isPieceUnder, isUnder } from './falling-line.ts';
import { type VisitStance, visitStances } from './stances.ts';
import { trapezoidsOf } from './trapezoids.ts';
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

/** Angles on either side of upright that are looked at before anything is bounded. */
const FIRST_LOOKS = 4;

/** A range of tilts: its middle and half its width, radians. */
interface TiltRange {
  readonly middle: number;
  readonly half: number;
}

/**
 * The greatest thickness of a strip that may be tilted by up to `limit` either way, against its height.
 *
 * Branch and bound over the tilt. Where a strip of thickness w and height h leans by d, the opening has both its long
 * sides at all levels of v = h cos d - w sin d. So the walls leave W >= w / cos d - v tan d between them over v, W the
 * greatest gap of any stretch so tall (below 0 where walls pass each other): the upright gaps of the middle of a range of
 * tilts bound all strips of the range ({@link leaning}) that are taller than v = 0 asks for. A range is done with when that bound lies nowhere above the line
 * that is known by more than {@link TILTED_ACCURACY}; else it is halved. Most parts of the opening are done with by one
 * corner of theirs, without a look at their walls.
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
  for (let k = 1; k <= FIRST_LOOKS; k++)
    for (const tilt of [(-limit * k) / FIRST_LOOKS, (limit * k) / FIRST_LOOKS]) {
      line = higherOf(line, uprightLine(turnedAbout(outline, -tilt), tilt));
      yield { done: 0, total };
    }
  let done = 0;
  let open: TiltRange[] = [{ middle: 0, half: limit }];
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
  // Walls that pass each other by more than anything in the opening can lean let nothing by.
  const passed = (maxY - minY) * lean.tangent;
  const near: FallingLine[] = [];
  const look: VisitStance = (foot, head, left, right) => {
    const height = head.high - foot.low;
    const thickness = thicknessBound(foot, head, left, right);
    if (thickness <= -passed) return;
    const most = lean.thickness(height, thickness);
    if (most <= 0 || isUnder(known, SLACK, lean.height(height, most), most)) return;
    near.push(bestOf(foot, head, left, right, middle, -passed));
  };
  visitStances(trapezoidsOf(upright), look, Infinity, passed);
  const gains = near.map(aboveNothing).filter((one) => !isBoundedBy(known, LEAST_GAIN, one, leaning(0)));
  const line = gains.length === 0 ? known : higherOf(known, highest(gains));
  const tallEnough = (maxX - minX) * lean.tangent <= LEAST_HEIGHT;
  return { line, bounded: tallEnough && near.every((one) => isBoundedBy(line, SLACK, one, lean)) };
}

/** How large a strip may be that leans by at most an angle, between walls that leave a gap over a height. */
interface Leaning {
  readonly tangent: number;
  /** Its greatest thickness. */
  thickness(height: number, gap: number): number;
  /** Its greatest height, if it has that thickness. */
  height(height: number, thickness: number): number;
}

/** By w <= W cos d + v sin d and h = (v + w sin d) / cos d, for all angles d up to the given one: the greatest of each term. */
function leaning(angle: number): Leaning {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return {
    tangent: s / c,
    thickness: (height, gap) => (gap > 0 ? gap : gap * c) + height * s,
    height: (height, thickness) => (height + thickness * s) / c,
  };
}

/** Whether what may lean between walls of these gaps lies under a line, within a slack. */
function isBoundedBy(known: FallingLine, slack: number, gaps: FallingLine, lean: Leaning): boolean {
  const { heights, thicknesses } = gaps;
  const isPieceBounded = (v0: number, g0: number, v1: number, g1: number) => {
    const [w0, w1] = [lean.thickness(v0, g0), lean.thickness(v1, g1)];
    return isPieceUnder(known, slack, lean.height(v0, w0), w0, lean.height(v1, w1), w1);
  };
  for (let i = 0; i < heights.length; i++) {
    const k = Math.min(i + 1, heights.length - 1);
    const [v0, g0, v1, g1] = [heights[i], thicknesses[i], heights[k], thicknesses[k]];
    if (g0 > 0 && g1 < 0) {
      // Where the walls begin to pass each other, the bound has a corner.
      const v = v0 + ((v1 - v0) * g0) / (g0 - g1);
      if (!isPieceBounded(v0, g0, v, 0) || !isPieceBounded(v, 0, v1, g1)) return false;
    } else if (!isPieceBounded(v0, g0, v1, g1)) return false;
  }
  return true;
}
