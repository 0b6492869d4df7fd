import { boxOf, MAX_COORDINATE, type Point, translatePoints } from '../geom/point.ts';
import { squaredDistance } from '../geom/segment-distance.ts';
import { signedArea } from '../geom/signed-area.ts';
import { simplifyOutline } from '../geom/simplify.ts';
import { makeDrawn, type Vertex } from '../geom/vertex.ts';
import type { Contour } from './find-contours.ts';
import { depthAt, magnificationAt, mapPoint, type PlaneMap } from './plane-map.ts';
import { type Sharpened, sharpenCorners } from './sharpen-corners.ts';

/** Most corners of a traced outline: more cannot be judged against each other in reasonable time. */
export const MOST_CORNERS = 1_000;

/** How an outline is made of a contour. */
export interface OutlineSettings {
  /** How far an outline may leave the traced line, nanometres. */
  readonly tolerance: number;
  /** Whether straight runs are brought to meet in sharp corners. */
  readonly sharpen: boolean;
}

/** An outline among the profiles. */
export interface TracedOutline {
  /** Sound, counter-clockwise, whole nanometres, its box beginning at the origin; add `at` for where it lies. */
  readonly vertices: readonly Vertex[];
  readonly at: Point;
  /** Square nanometres. */
  readonly area: number;
  /** Greatest distance of the traced line from the outline, nanometres. */
  readonly deviation: number;
  /** How far the furthest corner was moved off the traced line to sharpen it, nanometres. */
  readonly sharpened: number;
  /** The tolerance that was kept: more than asked for where the outline had too many corners, less where it crossed itself. */
  readonly tolerance: number;
  /** The size of a pixel there, nanometres. */
  readonly pixel: number;
}

/** An outline, or why a contour makes none. */
export type OutlineTrace =
  | { readonly ok: true; readonly outline: TracedOutline }
  | { readonly ok: false; readonly what: string; readonly cure: string };

/** Tolerances are tried in steps of this factor, at most so many. */
const FACTOR = 1.6;
const MOST_TRIES = 24;

/**
 * The outline of a contour: mapped to nanometres, simplified, corners sharpened, sound and of at most
 * {@link MOST_CORNERS} corners.
 *
 * @accuracy `deviation` is measured. Against the thing itself: about a tenth of a pixel along edges, a third at corners.
 * @check tests/unit/trace/trace-picture.test.ts, tests/outside/trace-outline.test.ts
 */
export function outlineOf(contour: Contour, toProfile: PlaneMap, settings: OutlineSettings): OutlineTrace {
  if (contour.points.some((point) => !(depthAt(toProfile, point) > 0)))
    return { ok: false, what: 'it reaches beyond the horizon of the perspective', cure: 'Mark a larger rectangle.' };
  const mapped = contour.points.map((point) => mapPoint(toProfile, point));
  const box = boxOf(mapped);
  if (Math.max(box.maxX - box.minX, box.maxY - box.minY) > MAX_COORDINATE)
    return { ok: false, what: 'it is larger than 47 mm, more than any section', cure: 'Set the scale first.' };
  const at = { x: Math.round(box.minX) + 0, y: Math.round(box.minY) + 0 };
  const traced = fromTip(translatePoints(mapped, { x: -at.x, y: -at.y }));
  const pixel = magnificationAt(toProfile, contour.points[0]);
  let sharp: Sharpened = settings.sharpen ? sharpenCorners(traced, pixel) : { points: traced, moved: 0 };
  let fault = 'it has too many corners';
  for (let step = 0, tolerance = settings.tolerance; step < MOST_TRIES; step++) {
    const made = attempt(traced, sharp, tolerance);
    if (made.kind === 'made') return { ok: true, outline: { ...fromOrigin(made, at), pixel, tolerance } };
    if (made.kind === 'too many') tolerance *= FACTOR;
    else {
      // A sharpened corner may have crossed something: the plain contour is tried before a finer simplification.
      fault = made.what;
      if (sharp.moved === 0) tolerance /= FACTOR;
      sharp = { points: traced, moved: 0 };
    }
  }
  return { ok: false, what: fault, cure: 'Blur the picture a little, or choose another threshold.' };
}

/** The contour from the point that is furthest from its first one on: a tip, where a simplification may well keep a vertex. */
function fromTip(points: readonly Point[]): Point[] {
  const [{ x, y }] = points;
  let [most, tip] = [-1, 0];
  for (const [i, p] of points.entries()) {
    const far = (p.x - x) ** 2 + (p.y - y) ** 2;
    if (far > most) [most, tip] = [far, i];
  }
  return [...points.slice(tip), ...points.slice(0, tip)];
}

/** The outline with its box beginning at the origin: sharpened corners may stand out of that of the contour. */
function fromOrigin(made: Made, at: Point): Made & { readonly at: Point } {
  const { minX, minY } = boxOf(made.vertices);
  const vertices = made.vertices.map(({ x, y }) => ({ x: x - minX, y: y - minY }));
  return { ...made, vertices, at: { x: at.x + minX, y: at.y + minY } };
}

interface Made {
  readonly kind: 'made';
  readonly vertices: readonly Vertex[];
  readonly area: number;
  readonly deviation: number;
  readonly sharpened: number;
}

type Attempt = Made | { readonly kind: 'unsound'; readonly what: string } | { readonly kind: 'too many' };

function attempt(traced: readonly Point[], sharp: Sharpened, tolerance: number): Attempt {
  const simple = simplifyOutline(sharp.points, tolerance);
  if (simple.length > MOST_CORNERS) return { kind: 'too many' };
  const made = makeDrawn(simple);
  return made.ok ? finished(traced, made.drawn, sharp.moved) : { kind: 'unsound', what: made.fault.message };
}

function finished(traced: readonly Point[], vertices: readonly Vertex[], sharpened: number): Attempt {
  const deviation = furthestFrom(traced, vertices);
  return { kind: 'made', vertices, area: Math.abs(signedArea(vertices)), deviation, sharpened };
}

/** The greatest distance of some points from a closed outline. */
function furthestFrom(points: readonly Point[], outline: readonly Point[]): number {
  let furthest = 0;
  for (const { x, y } of points) {
    let nearest = Infinity;
    for (let i = 0, k = outline.length - 1; i < outline.length; k = i++) {
      const off = squaredDistance(x, y, outline[k].x, outline[k].y, outline[i].x, outline[i].y);
      if (off < nearest) nearest = off;
    }
    if (nearest > furthest) furthest = nearest;
  }
  return Math.sqrt(furthest);
}
