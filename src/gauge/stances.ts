import { leftAt, rightAt, type Trapezoid } from './trapezoids.ts';

/**
 * All strips whose lower end lies in one part of the opening and whose upper end lies in another. Between the two parts
 * the opening is no wider than from `left` to `right`.
 */
export interface Stance {
  readonly foot: Trapezoid;
  readonly head: Trapezoid;
  /** Furthest in that the left wall stands between the two parts; -Infinity where both are one. */
  readonly left: number;
  readonly right: number;
}

/**
 * Visits every stance that lets anything pass, from each foot upwards.
 *
 * @param parts what {@link trapezoidsOf} gives.
 * @param tallest stances whose strips are all taller are left out.
 */
export function visitStances(parts: readonly Trapezoid[], visit: (stance: Stance) => void, tallest = Infinity): void {
  for (const foot of parts) climb({ foot, head: foot, left: -Infinity, right: Infinity }, visit, tallest);
}

function climb(start: Stance, visit: (stance: Stance) => void, tallest: number): void {
  const open: Stance[] = [start];
  for (let stance = open.pop(); stance; stance = open.pop()) {
    visit(stance);
    const { foot, head } = stance;
    if (head.high - foot.high > tallest) continue;
    // A head on the way counts with both its ends; the foot with its upper end only.
    const [inner, outer] = head === foot ? [-Infinity, Infinity] : [head.left1, head.right1];
    for (const next of head.above) {
      const left = Math.max(stance.left, inner, foot.left1, next.left0);
      const right = Math.min(stance.right, outer, foot.right1, next.right0);
      if (right > left) open.push({ foot, head: next, left, right });
    }
  }
}

/** Where the walls hold a strip that stands from `low` to `high`, furthest in on either side. */
export function wallsAt(
  { foot, head, left, right }: Stance,
  low: number,
  high: number,
): { left: number; right: number } {
  return {
    left: Math.max(left, leftAt(foot, low), leftAt(head, high)),
    right: Math.min(right, rightAt(foot, low), rightAt(head, high)),
  };
}

/** The thickest strip of the stance from `low` to `high`; below 0 where the walls pass each other. */
export function thicknessBetween(stance: Stance, low: number, high: number): number {
  const walls = wallsAt(stance, low, high);
  return walls.right - walls.left;
}

/** A line in the plane of (low end, high end) of a strip: a * low + b * high = c. */
type EndLine = readonly [a: number, b: number, c: number];

/**
 * The lines in the plane of a strip's ends along which another wall begins to hold it, and those that bound the stance.
 * Between them the thickness is linear in both ends; over the whole stance it is the least of linear functions, concave.
 */
function linesOf({ foot, head, left, right }: Stance): EndLine[] {
  const lines: EndLine[] = [
    [1, 0, foot.low],
    [1, 0, foot.high],
    [0, 1, head.low],
    [0, 1, head.high],
  ];
  if (foot === head) lines.push([1, -1, 0]);
  pushSide(lines, foot, head, foot.left0, foot.left1, head.left0, head.left1, left);
  pushSide(lines, foot, head, foot.right0, foot.right1, head.right0, head.right1, right);
  return lines;
}

function pushSide(
  lines: EndLine[],
  foot: Trapezoid,
  head: Trapezoid,
  foot0: number,
  foot1: number,
  head0: number,
  head1: number,
  limit: number,
): void {
  const footSlope = (foot1 - foot0) / (foot.high - foot.low);
  const headSlope = (head1 - head0) / (head.high - head.low);
  if (footSlope !== 0 && Number.isFinite(limit)) lines.push([1, 0, foot.low + (limit - foot0) / footSlope]);
  if (headSlope !== 0 && Number.isFinite(limit)) lines.push([0, 1, head.low + (limit - head0) / headSlope]);
  if (footSlope !== 0 && headSlope !== 0)
    lines.push([footSlope, -headSlope, head0 - headSlope * head.low - foot0 + footSlope * foot.low]);
}

/**
 * Heights and thicknesses of strips of the stance, among them all corners of what it lets pass: every crossing of two
 * lines at which walls change.
 *
 * @param tell gets height and thickness of one strip that goes in, thickness possibly below 0 (then it does not).
 */
export function visitCorners(stance: Stance, tell: (height: number, thickness: number) => void): void {
  const { foot, head } = stance;
  const lines = linesOf(stance);
  for (let i = 0; i < lines.length; i++)
    for (let k = i + 1; k < lines.length; k++) {
      const [a, b, c] = lines[i];
      const [d, e, f] = lines[k];
      const det = a * e - b * d;
      if (det === 0) continue;
      const low = within((c * e - b * f) / det, foot.low, foot.high);
      const high = within((a * f - c * d) / det, head.low, head.high);
      if (high >= low) tell(high - low, thicknessBetween(stance, low, high));
    }
}

/** Crossings outside a stance by no more than this lie on its border, nanometres: what doubles round away. */
const ON_BORDER = 1e-6;

/** `at` between two ends, NaN where it lies outside them. */
function within(at: number, least: number, most: number): number {
  if (at < least - ON_BORDER || at > most + ON_BORDER) return Number.NaN;
  return Math.min(most, Math.max(least, at));
}

/** A strip's lower end where it is thickest among those of a stance and a height, and the room it has up and down. */
export interface BestStance {
  readonly stance: Stance;
  readonly thickness: number;
  /** The lower end may lie anywhere from here ... */
  readonly from: number;
  /** ... to here. */
  readonly to: number;
}

/** Ends nearer to each other in thickness than this are equally good, nanometres. */
const EQUAL = 1e-3;

/** The thickest strips of one height in a stance, or null where none is so tall. */
export function bestOfHeight(stance: Stance, height: number): BestStance | null {
  const { foot, head } = stance;
  const least = Math.max(foot.low, head.low - height);
  const most = Math.min(foot.high, head.high - height);
  if (most < least) return null;
  const ends = [least, most];
  for (const [a, b, c] of linesOf(stance)) {
    const at = (c - b * height) / (a + b);
    if (at > least && at < most) ends.push(at);
  }
  const found = ends.map((low) => ({ low, thickness: thicknessBetween(stance, low, low + height) }));
  const thickness = found.reduce((best, one) => Math.max(best, one.thickness), -Infinity);
  const good = found.filter((one) => one.thickness >= thickness - EQUAL).map(({ low }) => low);
  return { stance, thickness, from: Math.min(...good), to: Math.max(...good) };
}
