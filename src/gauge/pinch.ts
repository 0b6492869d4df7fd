import type { Point } from '../geom/point.ts';
import { nearestOnSegment } from '../geom/segment-distance.ts';
import { knotFrom } from './knots.ts';
import { type BestStance, bestOfHeight, visitStances, wallsAt } from './stances.ts';
import { type ThicknessCurve, thicknessAt } from './thickness-curve.ts';
import { trapezoidsOf } from './trapezoids.ts';
import { turnedAbout } from './turn-points.ts';

/** Which side of a strip, as it stands in the drawing; ends are its short sides. */
export type StripSide = 'left' | 'right' | 'bottom' | 'top';

/** Where the plug touches a strip: one place (`from` is `to`) or a stretch. Nanometres, the opening's coordinates. */
export interface Touch {
  readonly side: StripSide;
  readonly from: Point;
  readonly to: Point;
}

/** The thickest strip of a height where it stands, and what holds it. */
export interface Pinch {
  readonly thickness: number;
  readonly height: number;
  /** Radians, counter-clockwise. */
  readonly tilt: number;
  /** Its corners, counter-clockwise from the lower left one, in the opening's coordinates; nanometres, fractions. */
  readonly strip: readonly [Point, Point, Point, Point];
  /** Where it touches the plug. */
  readonly touches: readonly Touch[];
  /** The two places across from each other, left and right, that set the thickness: those least apart in height. */
  readonly across: readonly [Point, Point];
}

/** The plug touches where it is no further away than this, nanometres. */
const TOUCHING = 2;

/**
 * The thickest strip of a height at a given tilt, and where the plug holds it. Where it has room to slide up or down it
 * stands in the middle of that room.
 *
 * @param outline a simple polygon, nanometres.
 * @returns null where no strip so tall goes in at that tilt.
 * @check tests/unit/gauge/pinch.test.ts
 */
export function pinchAtTilt(outline: readonly Point[], height: number, tilt: number): Pinch | null {
  const upright = turnedAbout(outline, -tilt);
  let best: BestStance | null = null;
  visitStances(
    trapezoidsOf(upright),
    (foot, head, left, right) => {
      const found = bestOfHeight({ foot, head, left, right }, height);
      if (found && found.thickness > 0 && (!best || isBetter(found, best))) best = found;
    },
    height,
  );
  return best && pinchOf(best, outline, height, tilt);
}

/** By how much less tall a strip is tried where a jump of the curve was rounded up, nanometres: one step of that rounding. */
const ROUNDED_JUMP = 1e-3;

/** A strip that is thinner than its curve by more than this stands beyond a jump, nanometres. */
const BEYOND_JUMP = 0.1;

/**
 * {@link pinchAtTilt} for the thickest strip of a height on a curve, at the tilt at which it goes in.
 *
 * Corners of curves are rounded to a thousandth of a nanometre. Right at a jump that was rounded up the strip is a hair
 * too tall for where the curve has it, so one that is less tall by that hair is told.
 *
 * @param outline the opening that the curve is of.
 */
export function pinchOnCurve(curve: ThicknessCurve, outline: readonly Point[], height: number): Pinch | null {
  const tilt = tiltAt(curve, height);
  const pinch = pinchAtTilt(outline, height, tilt);
  const missing = thicknessAt(curve, height) - (pinch?.thickness ?? 0);
  if (missing <= BEYOND_JUMP) return pinch;
  const lower = pinchAtTilt(outline, height - ROUNDED_JUMP, tilt);
  return lower && lower.thickness > (pinch?.thickness ?? 0) ? { ...lower, height } : pinch;
}

/** The tilt at which the thickest strip of a height goes in, radians; 0 where the curve is of upright strips. */
export function tiltAt({ knots }: Pick<ThicknessCurve, 'knots'>, height: number): number {
  return knots[knotFrom(knots, height)]?.tilt ?? 0;
}

/** Thicker, or as thick with more room. */
function isBetter(a: BestStance, b: BestStance): boolean {
  const apart = a.thickness - b.thickness;
  return Math.abs(apart) > 1e-3 ? apart > 0 : a.to - a.from > b.to - b.from;
}

function pinchOf({ stance, from, to }: BestStance, outline: readonly Point[], height: number, tilt: number): Pinch {
  const low = (from + to) / 2;
  const { left, right } = wallsAt(stance, low, low + height);
  const corners = [
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: low + height },
    { x: left, y: low + height },
  ] as const;
  const strip = turnedAbout(corners, tilt) as unknown as Pinch['strip'];
  const touches = touchesOf(strip, outline);
  return { thickness: right - left, height, tilt, strip, touches, across: acrossOf(strip, touches) };
}

const SIDES: readonly StripSide[] = ['bottom', 'right', 'top', 'left'];

/** Where the outline touches the strip's sides. */
function touchesOf(strip: readonly Point[], outline: readonly Point[]): Touch[] {
  const touches: Touch[] = [];
  for (const [k, side] of SIDES.entries()) {
    const [a, b] = [strip[k], strip[(k + 1) % strip.length]];
    for (const [i, p] of outline.entries()) {
      const q = outline[(i + 1) % outline.length];
      const found = meeting(a, b, p, q);
      if (!found || (isCorner(found, a, b) && !holds(side, a, b, p, q))) continue;
      const [from, to] = found;
      const known = touches.findIndex((t) => t.side === side && isSamePlace(t, from, to));
      if (known < 0) touches.push({ side, from, to });
      else if (spread(from, to) > spread(touches[known].from, touches[known].to)) touches[known] = { side, from, to };
    }
  }
  return touches;
}

/** The part of segment a-b that p-q touches, as its ends; null where they stand apart. */
function meeting(a: Point, b: Point, p: Point, q: Point): readonly [Point, Point] | null {
  const places = [
    ...[p, q].map((end) => [end, nearestOnSegment(end, a, b)] as const),
    ...[a, b].map((end) => [end, nearestOnSegment(end, p, q)] as const),
  ].filter(([x, y]) => Math.hypot(x.x - y.x, x.y - y.y) <= TOUCHING);
  if (places.length === 0) return null;
  const on = places.map(([, near]) => nearestOnSegment(near, a, b));
  const along = (m: Point) => (m.x - a.x) * (b.x - a.x) + (m.y - a.y) * (b.y - a.y);
  const first = on.reduce((x, y) => (along(y) < along(x) ? y : x));
  const last = on.reduce((x, y) => (along(y) > along(x) ? y : x));
  return [first, last];
}

/** Whether a touch is nothing but an end of the side a-b. */
function isCorner([from, to]: readonly [Point, Point], a: Point, b: Point): boolean {
  return [a, b].some((end) => spread(from, end) <= 2 * TOUCHING && spread(to, end) <= 2 * TOUCHING);
}

/**
 * Whether an edge p-q of the outline that touches a corner of the strip holds its side a-b: an end only where it runs along
 * rather than across it, a long side unless it runs straight across.
 */
function holds(side: StripSide, a: Point, b: Point, p: Point, q: Point): boolean {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, q.x - p.x, q.y - p.y];
  const [along, across] = [Math.abs(ux * vx + uy * vy), Math.abs(ux * vy - uy * vx)];
  return side === 'left' || side === 'right' ? along > 1e-9 * across : along >= across;
}

/** Whether one of two touches lies within the other. */
function isSamePlace(touch: Touch, from: Point, to: Point): boolean {
  const near = (p: Point, a: Point, b: Point) => {
    const n = nearestOnSegment(p, a, b);
    return Math.hypot(p.x - n.x, p.y - n.y) <= 2 * TOUCHING;
  };
  const inside = near(from, touch.from, touch.to) && near(to, touch.from, touch.to);
  return inside || (near(touch.from, from, to) && near(touch.to, from, to));
}

function spread(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The places on the left and on the right that are least apart in height; the middle of what they share where they do. */
function acrossOf(strip: Pinch['strip'], touches: readonly Touch[]): readonly [Point, Point] {
  const lefts = touches.filter(({ side }) => side === 'left');
  const rights = touches.filter(({ side }) => side === 'right');
  const pairs = lefts.flatMap((left) => rights.map((right) => nearestPair(left, right)));
  if (pairs.length === 0) return [middle(strip[0], strip[3]), middle(strip[1], strip[2])];
  return pairs.reduce((a, b) => (Math.abs(b[0].y - b[1].y) < Math.abs(a[0].y - a[1].y) ? b : a));
}

function nearestPair(left: Touch, right: Touch): readonly [Point, Point] {
  const [l0, l1] = byHeight(left);
  const [r0, r1] = byHeight(right);
  const [low, high] = [Math.max(l0.y, r0.y), Math.min(l1.y, r1.y)];
  if (low <= high) return [atHeight(l0, l1, (low + high) / 2), atHeight(r0, r1, (low + high) / 2)];
  return l1.y < r0.y ? [l1, r0] : [l0, r1];
}

function byHeight({ from, to }: Touch): readonly [Point, Point] {
  return from.y <= to.y ? [from, to] : [to, from];
}

function atHeight(a: Point, b: Point, y: number): Point {
  return a.y === b.y ? a : { x: a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y), y };
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}
