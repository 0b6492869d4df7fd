import type { FallingLine } from './falling-line.ts';
import { withinStance } from './stances.ts';
import type { Trapezoid } from './trapezoids.ts';
import { chainOver } from './upright-line.ts';

/** Where two walls between the ends of a stance stand furthest in, and at which heights; nanometres. */
export interface InnerWalls {
  readonly left: number;
  readonly atLeft: number;
  readonly right: number;
  readonly atRight: number;
}

/** Lengths that change evenly with the heights of both ends, at + byLow * low + byHigh * high, in lists used again and again. */
class EvenLengths {
  readonly at: Float64Array;
  readonly byLow: Float64Array;
  readonly byHigh: Float64Array;
  count = 0;

  constructor(most: number) {
    this.at = new Float64Array(most);
    this.byLow = new Float64Array(most);
    this.byHigh = new Float64Array(most);
  }

  push(at: number, byLow: number, byHigh: number): void {
    this.at[this.count] = at;
    this.byLow[this.count] = byLow;
    this.byHigh[this.count++] = byHigh;
  }

  value(i: number, low: number, high: number): number {
    return this.at[i] + this.byLow[i] * low + this.byHigh[i] * high;
  }

  least(low: number, high: number): number {
    let least = Infinity;
    for (let i = 0; i < this.count; i++) least = Math.min(least, this.value(i, low, high));
    return least;
  }
}

/** Walls of one side, from below; the pairs of a left and a right one; and lines along which two pairs hold alike, or borders. */
const MOST_PAIRS = 9;
const BORDERS = 5;
const MOST_LINES = (MOST_PAIRS * (MOST_PAIRS - 1)) / 2 + BORDERS;
const pairs = new EvenLengths(MOST_PAIRS);
const lines = new EvenLengths(MOST_LINES);
/** One of the two pairs of each line; -1 for a border. */
const pairOfLine = new Int8Array(MOST_LINES);
const corners = new Float64Array(MOST_LINES * (MOST_LINES - 1));

/** A pair of walls is taken to hold a strip where it leaves more than the least by no more than this, nanometres: roundings, amply. */
const HOLDS = 10;

/**
 * How thick a strip of a stance may be that leans by no more than a little, against the height that both its sides have in
 * common.
 *
 * A left and a right wall that leave a gap W and are D apart in height leave a strip that leans by d no more than
 * W cos d + D sin d, which is at most W + D tan d where it is above 0. The thickness is the least of that over all
 * pairs, each linear in the ends of the strip: concave, with corners where two pairs hold alike.
 *
 * @param inner null where both ends lie in one part.
 * @param tangent of the greatest lean.
 * @returns a concave falling line; empty where nothing passes.
 * @check tests/unit/gauge/leaning-stance.test.ts
 */
export function leaningBest(foot: Trapezoid, head: Trapezoid, inner: InnerWalls | null, tangent: number): FallingLine {
  fillPairs(foot, head, inner, tangent);
  fillLines(foot, head);
  const { at, byLow, byHigh, count } = lines;
  let n = 0;
  for (let i = 0; i < count; i++)
    for (let k = i + 1; k < count; k++) {
      const det = byLow[i] * byHigh[k] - byHigh[i] * byLow[k];
      if (det === 0) continue;
      const low = withinStance((byHigh[i] * at[k] - at[i] * byHigh[k]) / det, foot.low, foot.high);
      const high = withinStance((at[i] * byLow[k] - byLow[i] * at[k]) / det, head.low, head.high);
      if (!(high >= low)) continue;
      const least = pairs.least(low, high);
      if (!holds(i, low, high, least) || !holds(k, low, high, least)) continue;
      corners[n++] = high - low;
      corners[n++] = least;
    }
  return chainOver(corners, n / 2, 0);
}

/** Whether the pairs of a line are among those that hold a strip. */
function holds(line: number, low: number, high: number, least: number): boolean {
  const pair = pairOfLine[line];
  return pair < 0 || pairs.value(pair, low, high) <= least + HOLDS;
}

/** What each pair of a left and a right wall leaves. */
function fillPairs(foot: Trapezoid, head: Trapezoid, inner: InnerWalls | null, tangent: number): void {
  const footLeft = slopeOf(foot, foot.left0, foot.left1);
  const footRight = slopeOf(foot, foot.right0, foot.right1);
  const headLeft = slopeOf(head, head.left0, head.left1);
  const headRight = slopeOf(head, head.right0, head.right1);
  const [leftLow, rightLow] = [foot.left0 - footLeft * foot.low, foot.right0 - footRight * foot.low];
  const [leftHigh, rightHigh] = [head.left0 - headLeft * head.low, head.right0 - headRight * head.low];
  pairs.count = 0;
  pairs.push(rightLow - leftLow, footRight - footLeft, 0);
  pairs.push(rightHigh - leftHigh, 0, headRight - headLeft);
  pairs.push(rightHigh - leftLow, -footLeft - tangent, headRight + tangent);
  pairs.push(rightLow - leftHigh, footRight - tangent, tangent - headLeft);
  if (!inner) return;
  const { left, atLeft, right, atRight } = inner;
  pairs.push(right - left + Math.abs(atRight - atLeft) * tangent, 0, 0);
  pairs.push(right - leftLow + atRight * tangent, -footLeft - tangent, 0);
  pairs.push(rightLow - left + atLeft * tangent, footRight - tangent, 0);
  pairs.push(right - leftHigh - atRight * tangent, 0, tangent - headLeft);
  pairs.push(rightHigh - left - atLeft * tangent, 0, headRight + tangent);
}

function slopeOf({ low, high }: Trapezoid, x0: number, x1: number): number {
  return (x1 - x0) / (high - low);
}

/** The borders of a stance, and the lines in it along which two pairs hold alike. */
function fillLines(foot: Trapezoid, head: Trapezoid): void {
  lines.count = 0;
  pairOfLine.fill(-1);
  lines.push(-foot.low, 1, 0);
  lines.push(-foot.high, 1, 0);
  lines.push(-head.low, 0, 1);
  lines.push(-head.high, 0, 1);
  if (foot === head) lines.push(0, 1, -1);
  const { at, byLow, byHigh, count } = pairs;
  for (let i = 0; i < count; i++)
    for (let k = i + 1; k < count; k++) {
      pairOfLine[lines.count] = i;
      lines.push(at[i] - at[k], byLow[i] - byLow[k], byHigh[i] - byHigh[k]);
      if (passesBy(lines.count - 1, foot, head)) lines.count--;
    }
}

/** Whether a line does not come to the ends of a stance: it lies on one side of all their corners. */
function passesBy(line: number, foot: Trapezoid, head: Trapezoid): boolean {
  const a = lines.value(line, foot.low, head.low);
  const b = lines.value(line, foot.low, head.high);
  const c = lines.value(line, foot.high, head.low);
  const d = lines.value(line, foot.high, head.high);
  return Math.min(a, b, c, d) > HOLDS || Math.max(a, b, c, d) < -HOLDS;
}
