import type { Point } from '../geom/point.ts';
import type { Ring } from '../geom/ring.ts';
import { type BladeBox, commonDepth, crossingUp, type FaceRun } from './face-runs.ts';
import { type FitFound, type FitProblem, fitLeastSquares } from './fit-least-squares.ts';
import { arcReach, distanceFromShape, type FacePoint, type GrooveShape, type ShapePart } from './groove-shape.ts';

/** A point of an outline: one of its vertices, or a place along a longer edge. `weight` is the length it stands for. */
export interface OutlineSample extends Point {
  readonly isVertex: boolean;
  readonly weight: number;
}

/** Vertices of an outline with as many places between them as `spacing` asks for, nanometres. */
export function sampleOutline(ring: Ring, spacing: number): OutlineSample[] {
  return ring.flatMap((p, i) => {
    const q = ring[(i + 1) % ring.length];
    const length = Math.hypot(q.x - p.x, q.y - p.y);
    // A place in the middle of every edge tells a straight root from an arc through its two ends.
    const count = Math.max(length > 2_000 ? 2 : 1, Math.ceil(length / spacing));
    return Array.from({ length: count }, (_, k) => ({
      x: p.x + ((q.x - p.x) * k) / count,
      y: p.y + ((q.y - p.y) * k) / count,
      isVertex: k === 0,
      weight: length / count,
    }));
  });
}

/** A sample as a place on a face. */
interface FaceSample extends FacePoint {
  readonly isVertex: boolean;
  readonly weight: number;
}

/** What a groove is fitted to: its stretch of the face, how far its surroundings count, and which ends it runs out at. */
export interface GrooveStretch {
  readonly side: 'left' | 'right';
  readonly run: FaceRun;
  /** Heights above the back between which samples count. */
  readonly within: readonly [number, number];
  readonly atBack: boolean;
  readonly atTop: boolean;
}

/** Samples further than this from what was found, nanometres, are no mere rounding: their arcs are not looked at alone. */
const CHORDS_OFF = 2_500;

/** The tangents of 0 and 72 degrees bound the lean of a flank that is looked for. */
const STEEPEST_LEAN = 3;

/**
 * The groove that fits a stretch of a face best: by least squares over places along the outline, from several starts.
 *
 * Where the outline is drawn with chords in place of arcs, places on the chords lie up to the chord error off, and would
 * make radii too large. So what fits all places to a few micrometres is fitted once more to the vertices alone, which
 * lie on the arcs.
 *
 * @check tests/unit/profile/read-grooves.test.ts
 */
export function fitGroove(
  samples: readonly OutlineSample[],
  box: BladeBox,
  stretch: GrooveStretch,
  tolerance: number,
): GrooveShape {
  const places = placesIn(samples, box, stretch);
  const all = problemOf(places, stretch);
  const rough = startsOf(stretch.run, tolerance)
    .map((start) => fitLeastSquares(all, start))
    .reduce((best, next) => (next.misfit < best.misfit ? next : best));
  const vertices = places.filter((p) => p.isVertex);
  const shape = shapeOf(rough.parameters, stretch);
  const off = Math.max(0, ...vertices.map((p) => Math.abs(distanceFromShape(shape, p).signed)));
  if (vertices.length < 4 || off > CHORDS_OFF) return shape;
  const exact = refine(places, stretch, rough);
  return shapeOf(exact.parameters, stretch);
}

/** Fits vertices, and places between two vertices on one straight part; twice, since the parts may shift a little. */
function refine(places: readonly FaceSample[], stretch: GrooveStretch, rough: FitFound): FitFound {
  let found = rough;
  for (let round = 0; round < 3; round++) {
    const shape = shapeOf(found.parameters, stretch);
    const parts = places.map((p) => distanceFromShape(shape, p).part);
    const kept = places.filter((p, i) => p.isVertex || isOnStraight(places, parts, i));
    const again = fitLeastSquares(problemOf(kept, stretch, 1), found.parameters);
    const settled = again.parameters.every((p, i) => Math.abs(p - found.parameters[i]) < (i === 3 ? 1e-6 : 1));
    found = again;
    if (settled) break;
  }
  return found;
}

/** Whether the vertices before and after a place lie on the same straight part of the groove. */
function isOnStraight(places: readonly FaceSample[], parts: readonly ShapePart[], i: number): boolean {
  const before = places.slice(0, i).findLastIndex((p) => p.isVertex);
  const after = places.findIndex((p, k) => k > i && p.isVertex);
  return before >= 0 && after >= 0 && parts[before] !== 'arc' && parts[before] === parts[after];
}

/** The samples of the outline that a stretch of a face is fitted to, in the order of the outline. */
function placesIn(samples: readonly OutlineSample[], box: BladeBox, { side, within }: GrooveStretch): FaceSample[] {
  const [from, to] = within;
  const top = samples.reduce((best, p, i) => (p.y > samples[best].y ? i : best), 0);
  const turned = [...samples.slice(top), ...samples.slice(0, top)];
  const lowest = turned.reduce((best, p, i) => (p.y < turned[best].y ? i : best), 0);
  // Counter-clockwise the left face runs down from the top, the right face up to it.
  const chain = side === 'left' ? turned.slice(0, lowest) : turned.slice(lowest);
  return chain
    .map((p) => ({
      up: p.y - box.back,
      in: side === 'left' ? p.x - box.left : box.right - p.x,
      isVertex: p.isVertex,
      weight: p.weight,
    }))
    .filter((p) => p.up >= from && p.up <= to);
}

/** Parameters: the two edges of the mouth, depth, lean, radius. An edge at an end of the blade stays where it is. */
function shapeOf([low, high, depth, lean, radius]: readonly number[], { atBack, atTop }: GrooveStretch): GrooveShape {
  return { low: atBack ? null : low, high: atTop ? null : high, depth, lean, radius };
}

function problemOf(places: readonly FaceSample[], stretch: GrooveStretch, power = 0): FitProblem {
  const weights = places.map((p) => (power === 1 ? 1 : Math.sqrt(Math.max(1, p.weight))));
  return {
    residuals: (parameters) => {
      const shape = shapeOf(parameters, stretch);
      return places.map((p, i) => distanceFromShape(shape, p).signed * weights[i]);
    },
    clamp: (parameters) => clamped(parameters, stretch),
    steps: [50, 50, 50, 1e-4, 50],
  };
}

/** Keeps a groove one that can be milled: edges apart, flanks that do not meet, arcs that fit between them. */
function clamped([low, high, depth, lean, radius]: readonly number[], stretch: GrooveStretch): number[] {
  const flanks = (stretch.atBack ? 0 : 1) + (stretch.atTop ? 0 : 1);
  const apart = Math.max(high, low + 10);
  const deep = Math.max(10, depth);
  const most = flanks === 0 ? STEEPEST_LEAN : (apart - low) / (flanks * deep);
  const leans = Math.min(Math.max(0, lean), STEEPEST_LEAN, Math.max(0, most - 1e-6));
  const perRadius = arcReach(1, leans);
  const root = apart - low - flanks * deep * leans;
  const widest = Math.min((deep * Math.hypot(1, leans)) / perRadius, root / (Math.max(1, flanks) * perRadius));
  return [low, apart, deep, leans, Math.min(Math.max(0, radius), Math.max(0, widest))];
}

/** Guesses to start from: the mouth as it is crossed, flanks as they lean or square, several radii. */
function startsOf(run: FaceRun, tolerance: number): number[][] {
  const depth = commonDepth(run, tolerance);
  const reversed = [...run.line].reverse();
  const lean = (line: readonly FacePoint[], sign: 1 | -1) => {
    const [a, b] = [crossingUp(line, depth * 0.2), crossingUp(line, depth * 0.5)];
    return a === null || b === null ? 0 : Math.max(0, (sign * (b - a)) / (0.3 * depth));
  };
  const leans = [lean(run.line, 1), lean(reversed, -1)];
  const guess = Math.min(STEEPEST_LEAN, Math.min(...leans) > 0 ? (leans[0] + leans[1]) / 2 : Math.max(...leans));
  const size = Math.min(depth, (run.to - run.from) / 2);
  return [guess, 0].flatMap((l) =>
    [0, 5_000 / size, 0.25, 0.7].map((share) => [
      run.from - tolerance * Math.min(1, l),
      run.to + tolerance * Math.min(1, l),
      depth,
      l,
      share * size,
    ]),
  );
}
