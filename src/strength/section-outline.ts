import { NM_PER_MM, type Point } from '../geom/point.ts';
import type { Ring } from '../geom/ring.ts';
import { arcOf, type EdgeArc, type Vertex } from '../geom/vertex.ts';
import { millVertices } from '../profile/mill-outline.ts';
import type { Milled } from '../profile/profile.ts';

/** A section to be examined: the way it is milled, else its outline as drawn, else its polygon. Nanometres. */
export interface SectionShape {
  readonly ring: Ring;
  /** Counter-clockwise, arcs as bulges. */
  readonly drawn?: readonly Vertex[];
  readonly milled?: Milled;
}

/** One edge of a section, straight or an arc, millimetres about the section's own origin. */
export interface SectionEdge {
  readonly from: Point;
  readonly to: Point;
  readonly arc: EdgeArc | null;
}

/** A section with its true arcs; lengths in millimetres, measured from `origin`. */
export interface SectionOutline {
  readonly edges: readonly SectionEdge[];
  /** What was taken away from the coordinates, nanometres. */
  readonly origin: Point;
}

/**
 * The true outline of a section, arcs as arcs: of a milled blade by its description, of a drawn one by its bulges, and of
 * any other its polygon.
 *
 * @accuracy ends of a milled blade's arcs are rounded to whole nanometres.
 * @check tests/unit/strength/section-outline.test.ts
 */
export function sectionOutline({ ring, drawn, milled }: SectionShape): SectionOutline {
  const vertices: readonly Vertex[] = milled ? millVertices(milled) : (drawn ?? ring);
  const origin = middleOf(vertices);
  const inMm = vertices.map(({ x, y, bulge }) => ({
    x: (x - origin.x) / NM_PER_MM,
    y: (y - origin.y) / NM_PER_MM,
    bulge,
  }));
  const edges = inMm.map((from, i) => {
    const to = inMm[(i + 1) % inMm.length];
    return { from, to, arc: trueArc(vertices[i], vertices[(i + 1) % vertices.length], origin) };
  });
  return { edges, origin };
}

/** The arc of an edge in millimetres about the origin. */
function trueArc(from: Vertex, to: Vertex, origin: Point): EdgeArc | null {
  const arc = arcOf(from, to);
  if (!arc) return null;
  const centre = { x: (arc.centre.x - origin.x) / NM_PER_MM, y: (arc.centre.y - origin.y) / NM_PER_MM };
  return { ...arc, centre, radius: arc.radius / NM_PER_MM };
}

/** The middle of the box of some vertices, whole nanometres. */
function middleOf(vertices: readonly Point[]): Point {
  const xs = vertices.map(({ x }) => x);
  const ys = vertices.map(({ y }) => y);
  const middle = (values: readonly number[]) => Math.round((Math.min(...values) + Math.max(...values)) / 2);
  return { x: middle(xs), y: middle(ys) };
}

/** The two directions of an edge, at its start and at its end, as unit vectors. */
export function edgeDirections({ from, to, arc }: SectionEdge): { readonly start: Point; readonly end: Point } {
  if (!arc) {
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
    return { start: along, end: along };
  }
  const side = Math.sign(arc.sweep);
  const at = (angle: number): Point => ({ x: -side * Math.sin(angle), y: side * Math.cos(angle) });
  return { start: at(arc.start), end: at(arc.start + arc.sweep) };
}
