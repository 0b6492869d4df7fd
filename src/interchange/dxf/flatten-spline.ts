import type { Point } from '../../geom/point.ts';
import { squaredDistance } from '../../geom/segment-distance.ts';
import { CURVE_CHORD_ERROR } from '../drawing.ts';

/** A rational B-spline; control points in nanometres. */
export interface Spline {
  readonly degree: number;
  readonly controlPoints: readonly Point[];
  /** As many as control points plus degree plus one, never falling. */
  readonly knots: readonly number[];
  /** Above 0, one for each control point; all 1 where absent. */
  readonly weights?: readonly number[];
}

/** A control point with its weight: [w x, w y, w]. */
type Weighted = readonly [number, number, number];

/** Highest degree that is read; drawing programs write 2 to 5, kernels up to 25. */
const MOST_DEGREE = 25;

/** Most points of one spline; beyond, the rest of a piece stays one chord. */
const MOST_POINTS = 100_000;

/** A piece is halved no more often than this: a thousandth of a nanometre of a piece of a kilometre. */
const MOST_HALVINGS = 32;

/** Why a spline cannot be drawn, in words, or null. */
export function splineFault({ degree, controlPoints, knots, weights }: Spline): string | null {
  const count = controlPoints.length;
  if (!Number.isInteger(degree) || degree < 1 || degree > MOST_DEGREE)
    return `its degree is ${degree}, must be from 1 to ${MOST_DEGREE}`;
  if (count <= degree) return `it has ${count} control points, a degree of ${degree} needs ${degree + 1} or more`;
  if (knots.length !== count + degree + 1) return `it has ${knots.length} knots, must be ${count + degree + 1}`;
  if (knots.some((knot, i) => i > 0 && knot < knots[i - 1])) return 'its knots do not rise';
  if (!(knots[count] > knots[degree])) return 'its knots are all the same';
  if (weights && weights.length !== count) return `it has ${weights.length} weights for ${count} control points`;
  if (weights?.some((weight) => !(weight > 0))) return 'a weight is not above 0';
  return null;
}

/**
 * Points along a spline, its two ends included; several lists where the spline jumps (a knot repeated more often than
 * its degree).
 *
 * Each span between two knots becomes a rational Bezier piece, whose control points are values of the span's blossom.
 * A piece is halved (de Casteljau) until it lies within the chord error of its chord: with weights above 0 every point of
 * it is a mean of the control points, and the share of the inner ones is bounded.
 *
 * @param spline without fault by {@link splineFault}.
 * @accuracy within {@link CURVE_CHORD_ERROR} of the spline.
 * @source L. Ramshaw, Blossoms are polar forms, 1989; G. Farin, Curves and Surfaces for CAGD (both from memory).
 * @check tests/unit/interchange/dxf-curves.test.ts, tests/outside/dxf-readers.test.ts
 */
export function flattenSpline(spline: Spline): Point[][] {
  const { degree, controlPoints, knots, weights } = spline;
  const weighted = controlPoints.map(({ x, y }, i): Weighted => {
    const w = weights?.[i] ?? 1;
    return [w * x, w * y, w];
  });
  const runs: Point[][] = [];
  let left = MOST_POINTS;
  for (let i = degree; i < controlPoints.length; i += 1) {
    if (!(knots[i + 1] > knots[i])) continue;
    const piece = bezierOfSpan(weighted, knots, degree, i);
    const start = project(piece[0]);
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (!run || !last || Math.hypot(last.x - start.x, last.y - start.y) > 1) runs.push([start]);
    const points = flattenPiece(piece, left);
    left = Math.max(1, left - points.length);
    for (const point of points) runs[runs.length - 1].push(point);
  }
  return runs;
}

/** The control points of the Bezier piece between knots `span` and the next. */
function bezierOfSpan(points: readonly Weighted[], knots: readonly number[], degree: number, span: number): Weighted[] {
  const [from, to] = [knots[span], knots[span + 1]];
  return Array.from({ length: degree + 1 }, (_, j) => {
    const local = points.slice(span - degree, span + 1);
    for (let level = 1; level <= degree; level += 1) {
      const at = level <= j ? to : from;
      for (let k = degree; k >= level; k -= 1) {
        const low = knots[span - degree + k];
        const high = knots[span + 1 + k - level];
        local[k] = mix(local[k - 1], local[k], (at - low) / (high - low));
      }
    }
    return local[degree];
  });
}

function mix(a: Weighted, b: Weighted, t: number): Weighted {
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
}

function project([x, y, w]: Weighted): Point {
  return { x: x / w, y: y / w };
}

/** Points after the first one of a piece. */
function flattenPiece(piece: readonly Weighted[], most: number): Point[] {
  const points: Point[] = [];
  const stack = [{ piece, depth: 0 }];
  for (let next = stack.pop(); next; next = stack.pop()) {
    const { piece: now, depth } = next;
    if (depth >= MOST_HALVINGS || points.length + stack.length >= most || isFlat(now)) {
      points.push(project(now[now.length - 1]));
      continue;
    }
    const [first, second] = halve(now);
    stack.push({ piece: second, depth: depth + 1 }, { piece: first, depth: depth + 1 });
  }
  return points;
}

function isFlat(piece: readonly Weighted[]): boolean {
  const [first, last] = [piece[0], piece[piece.length - 1]];
  const [from, to] = [project(first), project(last)];
  const most = (CURVE_CHORD_ERROR / innerShare(piece)) ** 2;
  return piece.slice(1, -1).every((point) => {
    const { x, y } = project(point);
    return squaredDistance(x, y, from.x, from.y, to.x, to.y) <= most;
  });
}

/** The greatest share that the inner control points have in a point of a piece: with equal weights 1 - 2^(1 - degree). */
function innerShare(piece: readonly Weighted[]): number {
  const weights = piece.map(([, , w]) => w);
  const ends = Math.min(weights[0], weights[weights.length - 1]);
  return 1 - (ends / Math.max(...weights)) * 2 ** (2 - piece.length) + Number.EPSILON;
}

function halve(piece: readonly Weighted[]): [Weighted[], Weighted[]] {
  const work = [...piece];
  const first: Weighted[] = [work[0]];
  const second: Weighted[] = [work[work.length - 1]];
  for (let level = piece.length - 1; level > 0; level -= 1) {
    for (let i = 0; i < level; i += 1) work[i] = mix(work[i], work[i + 1], 0.5);
    first.push(work[0]);
    second.push(work[level - 1]);
  }
  return [first, second.reverse()];
}
