import type { Point } from '../geom/point.ts';
import { edgeDirections, type SectionEdge, type SectionOutline } from './section-outline.ts';

/** A corner of two polygons at once: one that lies in the section, one that the section lies in. Millimetres. */
export interface FlatCorner {
  readonly inner: Point;
  readonly outer: Point;
  /** Number of the section's edge that starts here or runs through here. */
  readonly edge: number;
  /** Whether an arc runs through here, so that this is no true corner. */
  readonly onArc: boolean;
}

/** The outline as two polygons with the same corners in the same order, millimetres, counter-clockwise. */
export interface FlatOutline {
  readonly corners: readonly FlatCorner[];
  /** Whether the two polygons differ: there are arcs. */
  readonly hasArcs: boolean;
}

/** Chords of an arc turn by at most this at each corner, radians: 9 degrees. */
const MOST_TURN = Math.PI / 20;

/**
 * The outline's arcs as chords, from inside and from outside.
 *
 * An arc becomes corners in the middles of equal parts of it: on the arc itself, which gives chords, or where the tangents
 * meet, which gives tangents. Chords of an outward arc lie in the section and its tangents do not; at an inward arc it is
 * the other way round. So the section lies between two polygons, and where a figure grows with the section (torsion
 * constant, fully plastic torque), that of the inner polygon bounds it from below and that of the outer from above.
 *
 * @param sag how far chords may stand off their arc, millimetres.
 * @check tests/unit/strength/section-outline.test.ts
 */
export function flattenOutline(outline: SectionOutline, sag: number): FlatOutline {
  const corners = outline.edges.flatMap((edge, i) => [
    { inner: edge.from, outer: edge.from, edge: i, onArc: false },
    ...arcCorners(edge, i, sag),
  ]);
  return { corners, hasArcs: outline.edges.some(({ arc }) => arc) };
}

/** The corners that stand for an arc between its ends; none of a straight edge. */
function arcCorners({ arc }: SectionEdge, edge: number, sag: number): FlatCorner[] {
  if (!arc) return [];
  const sweep = Math.abs(arc.sweep);
  const step = Math.min(MOST_TURN, Math.sqrt((8 * sag) / arc.radius));
  const count = Math.ceil(sweep / step);
  const beyond = arc.radius / Math.cos(sweep / count / 2);
  return Array.from({ length: count }, (_, k) => {
    const angle = arc.start + (arc.sweep * (k + 0.5)) / count;
    const at = (radius: number): Point => ({
      x: arc.centre.x + radius * Math.cos(angle),
      y: arc.centre.y + radius * Math.sin(angle),
    });
    const [inner, outer] = arc.sweep > 0 ? [at(arc.radius), at(beyond)] : [at(beyond), at(arc.radius)];
    return { inner, outer, edge, onArc: true };
  });
}

/**
 * By how much the section turns where an edge starts, radians: positive at an outward corner, negative at a re-entrant
 * one, about 0 where an arc goes on from its tangent.
 */
export function turnAtStart(outline: SectionOutline, edge: number): number {
  const n = outline.edges.length;
  const into = edgeDirections(outline.edges[(edge + n - 1) % n]).end;
  const outOf = edgeDirections(outline.edges[edge]).start;
  return Math.atan2(into.x * outOf.y - into.y * outOf.x, into.x * outOf.x + into.y * outOf.y);
}
