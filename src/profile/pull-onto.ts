import type { Point } from '../geom/point.ts';
import { nearestOnSegment, squaredDistance } from '../geom/segment-distance.ts';
import { edgePoints, type Vertex } from '../geom/vertex.ts';

/** A turn about the middle of an outline's vertices, radians, and then a movement, nanometres. */
export interface Pull {
  readonly angle: number;
  readonly by: Point;
}

/** Points set along an outline. */
const SAMPLES = 240;

/** Arcs are taken as chords within this, nanometres. */
const CHORDS = 200;

/** When pulling ends: after so many steps, or with one that moves less than `enough` nanometres. */
export interface PullEnd {
  readonly steps: number;
  readonly enough: number;
}

const TO_THE_END: PullEnd = { steps: 80, enough: 0.05 };

/** A point of one outline, and the direction in which it is to come nearer to the other, and by how much. */
export interface Want {
  readonly at: Point;
  readonly towards: Point;
  readonly distance: number;
}

/**
 * How an outline is best moved, and turned, to lie on another one that it nearly lies on: steps of least squares over
 * points along both, each with its nearest point on the other, until a step moves nothing.
 *
 * @param turn whether it may be turned.
 * @param until when it ends.
 * @source see align-outline.
 */
export function pullOnto(
  vertices: readonly Vertex[],
  onto: readonly Vertex[],
  turn: boolean,
  until = TO_THE_END,
): Pull {
  const middle = middleOf(vertices);
  const line = chordsOf(vertices);
  const target = chordsOf(onto);
  const own = pointsAlong(line, SAMPLES);
  const others = pointsAlong(target, SAMPLES);
  let pull: Pull = { angle: 0, by: { x: 0, y: 0 } };
  for (let n = 0; n < until.steps; n++) {
    const move = mover(pull, middle);
    const moved = line.map(move);
    const wants = [...own.map((p) => wantOf(move(p), target)), ...others.map((p) => backWant(p, moved))];
    const centre = { x: middle.x + pull.by.x, y: middle.y + pull.by.y };
    const step = leastSquares(wants, centre, turn);
    pull = { angle: pull.angle + step.angle, by: { x: pull.by.x + step.by.x, y: pull.by.y + step.by.y } };
    if (Math.hypot(step.by.x, step.by.y) < until.enough && Math.abs(step.angle) < until.enough * 2e-8) break;
  }
  return pull;
}

function mover({ angle, by }: Pull, middle: Point): (p: Point) => Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return ({ x, y }) => {
    const [dx, dy] = [x - middle.x, y - middle.y];
    return { x: middle.x + by.x + dx * cos - dy * sin, y: middle.y + by.y + dx * sin + dy * cos };
  };
}

/** The middle of an outline's vertices; stays in place of the outline however it is turned. */
export function middleOf(vertices: readonly Vertex[]): Point {
  const sum = vertices.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / vertices.length, y: sum.y / vertices.length };
}

function chordsOf(vertices: readonly Vertex[]): Point[] {
  return vertices.flatMap((v, i) => edgePoints(v, vertices[(i + 1) % vertices.length], CHORDS));
}

/** So many points at equal distances along a closed line. */
export function pointsAlong(line: readonly Point[], count: number): Point[] {
  const lengths = line.map((p, i) =>
    Math.hypot(line[(i + 1) % line.length].x - p.x, line[(i + 1) % line.length].y - p.y),
  );
  const step = lengths.reduce((sum, length) => sum + length, 0) / count;
  const points: Point[] = [];
  let along = 0;
  for (const [i, p] of line.entries()) {
    const to = line[(i + 1) % line.length];
    for (; along < lengths[i]; along += step) {
      const share = along / lengths[i];
      points.push({ x: p.x + (to.x - p.x) * share, y: p.y + (to.y - p.y) * share });
    }
    along -= lengths[i];
  }
  return points;
}

/** Where a point of the outline is wanted: on the other one, at right angles to the edge that it is nearest to. */
function wantOf(at: Point, target: readonly Point[]): Want {
  const { point, towards } = nearestOn(at, target);
  return { at, towards, distance: (point.x - at.x) * towards.x + (point.y - at.y) * towards.y };
}

/** A point of the other outline wants the outline's nearest point to come to it. */
function backWant(wanted: Point, moved: readonly Point[]): Want {
  const { point, towards } = nearestOn(wanted, moved);
  return { at: point, towards, distance: (wanted.x - point.x) * towards.x + (wanted.y - point.y) * towards.y };
}

/** The nearest point of a closed line, and the direction square to the line there. */
function nearestOn(at: Point, line: readonly Point[]): { readonly point: Point; readonly towards: Point } {
  let least = Number.POSITIVE_INFINITY;
  let edge = 0;
  let from = line[line.length - 1];
  for (let i = 0; i < line.length; i++) {
    const to = line[i];
    const square = squaredDistance(at.x, at.y, from.x, from.y, to.x, to.y);
    if (square < least) [least, edge] = [square, i];
    from = to;
  }
  const [a, b] = [line[(edge + line.length - 1) % line.length], line[edge]];
  const point = nearestOnSegment(at, a, b);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const square = { x: -(b.y - a.y) / length, y: (b.x - a.x) / length };
  const off = Math.sqrt(least);
  // Past the end of an edge the way to the point is not square to it.
  const leans = off > 1 && Math.abs((point.x - at.x) * square.x + (point.y - at.y) * square.y) < 0.999 * off;
  return { point, towards: leans ? { x: (point.x - at.x) / off, y: (point.y - at.y) / off } : square };
}

/** The small turn about `centre` and movement that leave the least sum of squares. */
export function leastSquares(wants: readonly Want[], centre: Point, turn: boolean): Pull {
  // Turns are counted in nanometres at one millimetre, so that all three unknowns are of a kind.
  const arm = 1e6;
  const sums = new Float64Array(9);
  for (const {
    at,
    towards: { x, y },
    distance,
  } of wants) {
    const t = turn ? ((at.x - centre.x) * y - (at.y - centre.y) * x) / arm : 0;
    sums[0] += x * x;
    sums[1] += x * y;
    sums[2] += x * t;
    sums[3] += y * y;
    sums[4] += y * t;
    sums[5] += t * t;
    sums[6] += x * distance;
    sums[7] += y * distance;
    sums[8] += t * distance;
  }
  // A little weight on standing still, where the points leave a direction free.
  const still = 1e-9 * wants.length;
  sums[0] += still;
  sums[3] += still;
  sums[5] += turn ? still : 1;
  const [x, y, t] = solveThree(sums);
  return { angle: turn ? t / arm : 0, by: { x, y } };
}

/** Solves a symmetric system of three by Cramer's rule: its upper triangle row by row, then the right side. */
function solveThree([a, b, c, d, e, f, p, q, r]: Float64Array): readonly [number, number, number] {
  const [m0, m1, m2] = [d * f - e * e, c * e - b * f, b * e - c * d];
  const [m4, m5, m8] = [a * f - c * c, b * c - a * e, a * d - b * b];
  const whole = a * m0 + b * m1 + c * m2;
  return [(m0 * p + m1 * q + m2 * r) / whole, (m1 * p + m4 * q + m5 * r) / whole, (m2 * p + m5 * q + m8 * r) / whole];
}
