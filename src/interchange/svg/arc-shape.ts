import { type Affine, longSemiAxis, mapPoint, mapVector } from '../../geom/affine.ts';
import type { Point } from '../../geom/point.ts';
import { MAX_BULGE } from '../../geom/vertex.ts';
import { CURVE_CHORD_ERROR } from '../drawing.ts';
import type { PathPart } from './path-part.ts';

/** An elliptical arc of a path. */
export type ArcPart = Extract<PathPart, readonly ['A', ...number[]]>;

/** What an arc of a path is once it is mapped. */
export type ArcShape =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'line' }
  /** A circular arc: one edge, or two that meet in `middle` where it is nearly a full circle. */
  | { readonly kind: 'bulge'; readonly bulges: readonly number[]; readonly middle?: Point }
  /** An arc of an ellipse: so many chords, whose ends lie at equal shares of its way. */
  | { readonly kind: 'curve'; readonly count: number; readonly pointAt: (share: number) => Point };

/** Greatest difference from a circle, in nanometres or as a part of the radius, that counts as rounding. */
const ROUND_WITHIN = 1;
const ROUND_SHARE = 1e-9;

/** An arc that leaves its chord by less than this, in nanometres, is a line. */
const FLAT = 1;

/** An arc as its chord and what stands on it: a point is `middle + side * sin(a) + out * (cos(a) - cos(half))`. */
interface ArcFrame {
  /** Middle of the chord. */
  readonly middle: Point;
  /** The semi-axis along the chord, in the direction of travel, and the one across it, to where the arc bows out. */
  readonly side: Point;
  readonly out: Point;
  /** Half the arc's angle, up to pi. */
  readonly half: number;
}

/**
 * What an elliptical arc becomes under a map. It is built on its chord instead of on its centre, so that a huge radius
 * (an almost straight line) loses no digits.
 *
 * @param from where the arc begins, user units.
 * @param map user units to nanometres.
 * @returns a bulge where the image is circular, to {@link ROUND_WITHIN}; else points on the image of the ellipse.
 * @accuracy chords between the points lie within {@link CURVE_CHORD_ERROR} of the image.
 * @source Scalable Vector Graphics (SVG) 1.1, second edition, W3C 2011, appendix F.6 (radii that are zero or too
 *   small); the construction on the chord is our own.
 * @check tests/unit/interchange/svg-pieces.test.ts, tests/browser/svg-against-browser.test.ts
 */
export function arcShape(from: Point, part: ArcPart, map: Affine): ArcShape {
  const [, rx, ry, , , , x, y] = part;
  if (from.x === x && from.y === y) return { kind: 'nothing' };
  if (rx === 0 || ry === 0) return { kind: 'line' };
  const frame = frameOf(from, part, map);
  const { side, out, half } = frame;
  const rise = Math.hypot(out.x, out.y) * 2 * Math.sin(half / 2) ** 2;
  if (rise < FLAT) return { kind: 'line' };
  return isRound(side, out) ? bulgeShape(frame) : curveShape(frame);
}

function frameOf(from: Point, part: ArcPart, map: Affine): ArcFrame {
  const [, width, height, angle, large, sweep, x, y] = part;
  const [rx, ry] = [Math.abs(width), Math.abs(height)];
  const turn = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  // The chord seen where the ellipse is a circle of radius 1.
  const chordX = ((x - from.x) * cos + (y - from.y) * sin) / rx;
  const chordY = ((y - from.y) * cos - (x - from.x) * sin) / ry;
  const chord = Math.hypot(chordX, chordY);
  const grown = Math.max(1, chord / 2);
  const small = Math.asin(Math.min(1, chord / 2));
  const [ex, ey] = [chordX / chord, chordY / chord];
  const [nx, ny] = sweep ? [ey, -ex] : [-ey, ex];
  const image = (u: number, v: number) => {
    const [sx, sy] = [u * rx * grown, v * ry * grown];
    return mapVector(map, sx * cos - sy * sin, sx * sin + sy * cos);
  };
  const middle = mapPoint(map, (from.x + x) / 2, (from.y + y) / 2);
  return { middle, side: image(ex, ey), out: image(nx, ny), half: large ? Math.PI - small : small };
}

function isRound(side: Point, out: Point): boolean {
  const [a, b] = [Math.hypot(side.x, side.y), Math.hypot(out.x, out.y)];
  const within = Math.max(ROUND_WITHIN, ROUND_SHARE * a);
  return Math.abs(a - b) <= within && Math.abs(side.x * out.x + side.y * out.y) <= within * Math.max(a, b);
}

function pointOf({ middle, side, out, half }: ArcFrame, angle: number): Point {
  const along = Math.sin(angle);
  // cos(a) - cos(half), without the loss of digits of a difference.
  const across = 2 * Math.sin((half - angle) / 2) * Math.sin((half + angle) / 2);
  return { x: middle.x + side.x * along + out.x * across, y: middle.y + side.y * along + out.y * across };
}

/** An arc that bows out to the right of its way turns to the left. */
function bulgeShape(frame: ArcFrame): ArcShape {
  const { side, out, half } = frame;
  const sign = side.x * out.y - side.y * out.x < 0 ? 1 : -1;
  const bulge = half === Math.PI / 2 ? 1 : Math.tan(half / 2);
  if (bulge <= MAX_BULGE) return { kind: 'bulge', bulges: [sign * bulge] };
  const halfBulge = sign * Math.tan(half / 4);
  return { kind: 'bulge', bulges: [halfBulge, halfBulge], middle: pointOf(frame, 0) };
}

function curveShape(frame: ArcFrame): ArcShape {
  const { side, out, half } = frame;
  const longest = longSemiAxis(side, out);
  const count = Math.max(1, Math.ceil(2 * half * Math.sqrt(longest / (8 * CURVE_CHORD_ERROR))));
  return { kind: 'curve', count, pointAt: (share) => pointOf(frame, half * (2 * share - 1)) };
}
