import { boxOf, type Point } from '../geom/point.ts';
import { emptyLine, type FallingLine, higherOf, pushCorner, rounded } from './falling-line.ts';
import { cornersOf, MOST_CORNERS, thicknessBetween, visitStances } from './stances.ts';
import { type Trapezoid, trapezoidsOf } from './trapezoids.ts';

/**
 * The exact greatest thickness of an upright strip inside an outline, against its height.
 *
 * A strip from one height to another goes into the opening where the erosion of the opening by an upright segment of its
 * height holds a level segment of its thickness. For ends in two given trapezoids the thickness is the least of linear
 * functions of both ends, so the best for each height is a concave chain through corners where walls change
 * ({@link cornersOf}); the curve is the highest of all those chains.
 *
 * @param outline a simple polygon, nanometres, fractions allowed.
 * @param mark put on every piece.
 * @returns a falling line from height 0, its corners rounded to a thousandth of a nanometre.
 * @check tests/unit/gauge/upright-curve.test.ts
 */
export function uprightLine(outline: readonly Point[], mark = 0): FallingLine {
  const box = boxOf(outline);
  const known = new KnownStrips(box.maxY - box.minY);
  const parts = trapezoidsOf(outline);
  visitStances(parts, (foot, head, left, right) => known.learn(foot, head, left, right));
  const lines = [known.settle(mark)];
  visitStances(parts, (foot, head, left, right) => {
    if (!known.beats(foot, head, left, right)) lines.push(bestOf(foot, head, left, right, mark));
  });
  return highest(lines);
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

  /** Keeps the strips of a stance that end at the ends of both parts. */
  learn(foot: Trapezoid, head: Trapezoid, left: number, right: number): void {
    this.keep(head.high - foot.low, thicknessBetween(foot, head, left, right, foot.low, head.high));
    if (foot === head) return;
    this.keep(head.low - foot.low, thicknessBetween(foot, head, left, right, foot.low, head.low));
    this.keep(head.high - foot.high, thicknessBetween(foot, head, left, right, foot.high, head.high));
    this.keep(head.low - foot.high, right - left);
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
   * @returns the known strips as a falling line in steps.
   */
  settle(mark: number): FallingLine {
    const stairs: [number, number][] = [];
    for (let at = STEPS; at >= 0; at--) {
      const [height, thickness] = [rounded(this.heights[at]), rounded(this.own[at])];
      const thickest = stairs.at(-1)?.[1] ?? 0;
      this.thickest[at] = Math.max(this.own[at], this.thickest[at + 1]);
      if (thickness <= thickest) continue;
      if (stairs.length > 0) stairs.push([height, thickest]);
      stairs.push([height, thickness]);
    }
    return lineOf(stairs, mark);
  }

  /** Whether a strip is known that is at least as tall and as thick as any of the stance. */
  beats(foot: Trapezoid, head: Trapezoid, left: number, right: number): boolean {
    const at = Math.ceil((head.high - foot.low) / this.step);
    return at <= STEPS && this.thickest[at] >= thicknessBound(foot, head, left, right);
  }
}

/** A thickness that no strip of a stance exceeds. */
export function thicknessBound(foot: Trapezoid, head: Trapezoid, left: number, right: number): number {
  const least = Math.max(left, Math.min(foot.left0, foot.left1), Math.min(head.left0, head.left1));
  const most = Math.min(right, Math.max(foot.right0, foot.right1), Math.max(head.right0, head.right1));
  return most - least;
}

/** A line through corners given from the tallest to the thickest. */
function lineOf(corners: readonly (readonly [number, number])[], mark: number): FallingLine {
  const line = emptyLine();
  for (let i = corners.length - 1; i >= 0; i--) pushCorner(line, corners[i][0], corners[i][1], mark);
  return line;
}

const corners = new Float64Array(2 * MOST_CORNERS);

/** The best of one stance for each height: a concave falling line; empty where nothing passes. */
export function bestOf(foot: Trapezoid, head: Trapezoid, left: number, right: number, mark: number): FallingLine {
  return chainOver(corners, cornersOf(foot, head, left, right, corners), mark);
}

/**
 * The concave falling line over some strips, as far as they are thicker than nothing.
 *
 * @param corners height and thickness in turn; sorted and used up.
 * @param count how many strips there are.
 */
export function chainOver(corners: Float64Array, count: number, mark: number): FallingLine {
  tallestFirst(corners, count);
  // The chain is kept at the front of the list it is made of: it never overtakes what is still to be looked at.
  let n = 0;
  for (let i = 0; i < count; i++) {
    const [height, thickness] = [corners[2 * i], corners[2 * i + 1]];
    if (n > 0 && thickness <= corners[2 * n - 1]) continue;
    while (n > 1 && !standsOut(corners, n, height, thickness)) n--;
    corners[2 * n] = height;
    corners[2 * n++ + 1] = thickness;
  }
  return lineOf(chainAboveNothing(corners, n), mark);
}

/** Sorts pairs of height and thickness, the tallest first and the thickest of equally tall ones. */
function tallestFirst(pairs: Float64Array, count: number): void {
  for (let i = 1; i < count; i++) {
    const [height, thickness] = [pairs[2 * i], pairs[2 * i + 1]];
    let k = i - 1;
    for (; k >= 0 && (pairs[2 * k] < height || (pairs[2 * k] === height && pairs[2 * k + 1] < thickness)); k--) {
      pairs[2 * k + 2] = pairs[2 * k];
      pairs[2 * k + 3] = pairs[2 * k + 1];
    }
    pairs[2 * k + 2] = height;
    pairs[2 * k + 3] = thickness;
  }
}

/** Whether the last of n corners stands above the line from the one before it to the next one. */
function standsOut(chain: Float64Array, n: number, height: number, thickness: number): boolean {
  const [h0, w0, h1, w1] = [chain[2 * n - 4], chain[2 * n - 3], chain[2 * n - 2], chain[2 * n - 1]];
  return (h1 - h0) * (thickness - w0) - (w1 - w0) * (height - h0) > 0;
}

/** The part of a chain of n corners, tallest first, where the thickness is above 0, from there; rounded. */
function chainAboveNothing(chain: Float64Array, n: number): (readonly [number, number])[] {
  const kept: (readonly [number, number])[] = [];
  for (let i = 0; i < n; i++) {
    const [height, thickness] = [chain[2 * i], chain[2 * i + 1]];
    if (thickness <= 0) continue;
    if (kept.length === 0 && i > 0) {
      const [h0, w0] = [chain[2 * i - 2], chain[2 * i - 1]];
      kept.push([rounded(h0 + ((height - h0) * w0) / (w0 - thickness)), 0]);
    }
    kept.push([rounded(height), rounded(thickness)]);
  }
  return kept;
}

/** The highest of many lines, joined two by two. */
export function highest(lines: readonly FallingLine[]): FallingLine {
  let row = lines.length > 1 ? lines : [...lines, emptyLine()];
  while (row.length > 1) {
    const next: FallingLine[] = [];
    for (let i = 0; i < row.length; i += 2) next.push(i + 1 < row.length ? higherOf(row[i], row[i + 1]) : row[i]);
    row = next;
  }
  return row[0];
}
