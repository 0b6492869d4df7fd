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
 * Gets the fields of a {@link Stance} one by one, and the heights at which the two walls stand: thousands are visited, and most
 * are of no further use. `most` is the thickness that what stands between the ends leaves, Infinity where both are one part.
 * To say false is to visit no stance further up from this foot.
 */
export type VisitStance = (
  foot: Trapezoid,
  head: Trapezoid,
  left: number,
  right: number,
  atLeft: number,
  atRight: number,
  most: number,
) => unknown;

/**
 * Visits every stance that lets anything pass, from each foot upwards.
 *
 * @param parts what {@link trapezoidsOf} gives.
 * @param tallest stances whose strips are all taller are left out.
 * @param tangent of how far strips may lean; two walls that are D apart in height leave them D times as much more.
 */
export function visitStances(parts: readonly Trapezoid[], visit: VisitStance, tallest = Infinity, tangent = 0): void {
  const climb = (
    foot: Trapezoid,
    head: Trapezoid,
    left: number,
    right: number,
    atLeft: number,
    atRight: number,
    most: number,
  ) => {
    if (visit(foot, head, left, right, atLeft, atRight, most) === false) return;
    if (head.high - foot.high > tallest) return;
    // A head on the way counts with both its ends; the foot with its upper end only.
    const { high, left1, right1 } = head;
    for (const next of head.above) {
      const { left0, right0 } = next;
      const nextLeft = Math.max(left, left1, left0);
      const nextRight = Math.min(right, right1, right0);
      const atNextLeft = nextLeft > left ? high : atLeft;
      const atNextRight = nextRight < right ? high : atRight;
      const pair = nextRight - nextLeft + Math.abs(atNextLeft - atNextRight) * tangent;
      const least = Math.min(most, right1 - left1, right0 - left0, pair);
      if (least > 0) climb(foot, next, nextLeft, nextRight, atNextLeft, atNextRight, least);
    }
  };
  for (const foot of parts) climb(foot, foot, -Infinity, Infinity, 0, 0, Infinity);
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

/** The thickest strip of a stance from `low` to `high`; below 0 where the walls pass each other. */
export function thicknessBetween(
  foot: Trapezoid,
  head: Trapezoid,
  left: number,
  right: number,
  low: number,
  high: number,
): number {
  const most = Math.min(right, rightAt(foot, low), rightAt(head, high));
  return most - Math.max(left, leftAt(foot, low), leftAt(head, high));
}

/** Most lines of one stance: four borders, the diagonal, three for each side. */
const MOST_LINES = 11;

/**
 * The lines in the plane of a strip's ends along which another wall begins to hold it, and those that bound the stance:
 * a * low + b * high = c. Between them the thickness is linear in both ends; over the whole stance it is the least of
 * linear functions, concave. Lists of numbers, used again and again: an opening has thousands of stances.
 */
class EndLines {
  readonly a = new Float64Array(MOST_LINES);
  readonly b = new Float64Array(MOST_LINES);
  readonly c = new Float64Array(MOST_LINES);
  count = 0;

  fill(foot: Trapezoid, head: Trapezoid, left: number, right: number): void {
    this.count = 0;
    this.push(1, 0, foot.low);
    this.push(1, 0, foot.high);
    this.push(0, 1, head.low);
    this.push(0, 1, head.high);
    if (foot === head) this.push(1, -1, 0);
    this.pushSide(foot, head, foot.left0, foot.left1, head.left0, head.left1, left);
    this.pushSide(foot, head, foot.right0, foot.right1, head.right0, head.right1, right);
  }

  private pushSide(
    foot: Trapezoid,
    head: Trapezoid,
    foot0: number,
    foot1: number,
    head0: number,
    head1: number,
    limit: number,
  ): void {
    const atFoot = (foot1 - foot0) / (foot.high - foot.low);
    const atHead = (head1 - head0) / (head.high - head.low);
    if (atFoot !== 0 && foot !== head) this.push(1, 0, foot.low + (limit - foot0) / atFoot);
    if (atHead !== 0 && foot !== head) this.push(0, 1, head.low + (limit - head0) / atHead);
    if (atFoot !== 0 && atHead !== 0) this.push(atFoot, -atHead, head0 - atHead * head.low - foot0 + atFoot * foot.low);
  }

  private push(a: number, b: number, c: number): void {
    this.a[this.count] = a;
    this.b[this.count] = b;
    this.c[this.count++] = c;
  }
}

const lines = new EndLines();

/**
 * Heights and thicknesses of strips of a stance, among them all corners of what it lets pass: every crossing of two
 * lines at which walls change.
 *
 * @param found gets height and thickness in turn, the thickness possibly below 0 (then it does not go in); has room for
 *   {@link MOST_CORNERS} of them.
 * @returns how many were found.
 */
export function cornersOf(foot: Trapezoid, head: Trapezoid, left: number, right: number, found: Float64Array): number {
  lines.fill(foot, head, left, right);
  const { a, b, c, count } = lines;
  let n = 0;
  for (let i = 0; i < count; i++)
    for (let k = i + 1; k < count; k++) {
      const det = a[i] * b[k] - b[i] * a[k];
      if (det === 0) continue;
      const low = withinStance((c[i] * b[k] - b[i] * c[k]) / det, foot.low, foot.high);
      const high = withinStance((a[i] * c[k] - c[i] * a[k]) / det, head.low, head.high);
      if (!(high >= low)) continue;
      found[n++] = high - low;
      found[n++] = thicknessBetween(foot, head, left, right, low, high);
    }
  return n / 2;
}

/** Most corners that {@link cornersOf} finds: every pair of lines. */
export const MOST_CORNERS = (MOST_LINES * (MOST_LINES - 1)) / 2;

/** Crossings outside a stance by no more than this lie on its border, nanometres: what doubles round away. */
const ON_BORDER = 1e-6;

/** `at` between two ends, NaN where it lies outside them. */
export function withinStance(at: number, least: number, most: number): number {
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
  const { foot, head, left, right } = stance;
  const least = Math.max(foot.low, head.low - height);
  const most = Math.min(foot.high, head.high - height);
  if (most < least) return null;
  const ends = [least, most];
  lines.fill(foot, head, left, right);
  for (let i = 0; i < lines.count; i++) {
    const at = (lines.c[i] - lines.b[i] * height) / (lines.a[i] + lines.b[i]);
    if (at > least && at < most) ends.push(at);
  }
  const found = ends.map((low) => ({ low, thickness: thicknessBetween(foot, head, left, right, low, low + height) }));
  const thickness = found.reduce((best, one) => Math.max(best, one.thickness), -Infinity);
  const good = found.filter((one) => one.thickness >= thickness - EQUAL).map(({ low }) => low);
  return { stance, thickness, from: Math.min(...good), to: Math.max(...good) };
}
