import { type Affine, longSemiAxis, mapPoint, mapVector } from '../../geom/affine.ts';
import type { Point } from '../../geom/point.ts';
import { arcOf, type Vertex, vertexAt } from '../../geom/vertex.ts';
import { CURVE_CHORD_ERROR } from '../drawing.ts';

/** Part of an ellipse: `centre` + `u` cos t + `v` sin t, for t from `start` through `sweep` radians (above 0). */
export interface EllipseArc {
  readonly centre: Point;
  readonly u: Point;
  readonly v: Point;
  readonly start: number;
  readonly sweep: number;
}

/** Most chords of one curve; only curves far larger than any section come near. */
const MOST_CHORDS = 4_096;

/** Differences of axes below this make a circle: 1 nm on a radius of 10 mm. */
const SAME = 1e-7;

const FULL = 2 * Math.PI;

/** The ellipse that a map makes of an ellipse. */
export function mapArc(map: Affine, arc: EllipseArc): EllipseArc {
  const { centre, u, v } = arc;
  return {
    ...arc,
    centre: mapPoint(map, centre.x, centre.y),
    u: mapVector(map, u.x, u.y),
    v: mapVector(map, v.x, v.y),
  };
}

/** The ellipse through a bulged edge, or null where the edge is straight; it runs from the edge's start to its end. */
export function ellipseOfEdge(from: Vertex, to: Point): EllipseArc | null {
  const arc = arcOf(from, to);
  if (!arc) return null;
  const turn = Math.sign(arc.sweep);
  const u = { x: arc.radius * Math.cos(arc.start), y: arc.radius * Math.sin(arc.start) };
  return { centre: arc.centre, u, v: { x: -u.y * turn, y: u.x * turn }, start: 0, sweep: Math.abs(arc.sweep) };
}

/** Whether an arc is a whole ellipse. */
export function isWhole({ sweep }: EllipseArc): boolean {
  return sweep >= FULL - 1e-9;
}

/**
 * The vertices of an arc in nanometres, its end included unless it is whole: a circle's as bulged edges of a half circle
 * at most (a whole one as four), any other ellipse's as chords.
 *
 * @accuracy chords within {@link CURVE_CHORD_ERROR}: an ellipse is a circle of radius 1 mapped, so that the height of a
 *   chord's arc, 1 - cos(dt/2), grows by no more than the longer half axis.
 * @check tests/unit/interchange/dxf-curves.test.ts
 */
export function arcVertices(arc: EllipseArc): Vertex[] {
  const { u, v, sweep } = arc;
  const size = Math.hypot(u.x, u.y);
  const round =
    Math.abs(size - Math.hypot(v.x, v.y)) <= SAME * size && Math.abs(u.x * v.x + u.y * v.y) <= SAME * size * size;
  if (!round) return sample(arc, chordCount(arc), 0);
  const count = isWhole(arc) ? 4 : Math.max(1, Math.ceil(sweep / Math.PI - 1e-9));
  const turn = Math.sign(u.x * v.y - u.y * v.x);
  return sample(arc, count, turn * Math.tan(sweep / count / 4));
}

function chordCount({ u, v, sweep }: EllipseArc): number {
  const step = 2 * Math.acos(Math.max(-1, 1 - CURVE_CHORD_ERROR / longSemiAxis(u, v)));
  const least = Math.ceil((4 * sweep) / FULL - 1e-9);
  return Math.min(MOST_CHORDS, Math.max(1, least, Math.ceil(sweep / step - 1e-9)));
}

function sample(arc: EllipseArc, count: number, bulge: number): Vertex[] {
  const { centre, u, v, start, sweep } = arc;
  const last = isWhole(arc) ? count - 1 : count;
  return Array.from({ length: last + 1 }, (_, k) => {
    const t = start + (sweep * k) / count;
    const [cos, sin] = [Math.cos(t), Math.sin(t)];
    const open = k === count ? 0 : bulge;
    return vertexAt(centre.x + u.x * cos + v.x * sin, centre.y + u.y * cos + v.y * sin, open);
  });
}
