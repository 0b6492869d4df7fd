import type { Point } from '../geom/point.ts';
import { squaredDistance } from '../geom/segment-distance.ts';
import { simplifyPath } from '../geom/simplify.ts';
import { makeDrawn, type Vertex, vertexAt } from '../geom/vertex.ts';
import { findArcs, openedAtCorner } from './find-arcs.ts';
import { notChanged } from './outline-change.ts';

/** An outline with fewer vertices, and how far it strays; or why there is none. */
export type Simplified =
  | {
      readonly ok: true;
      readonly vertices: readonly Vertex[];
      /** No point of either outline is further than this from the other, nanometres; never above the tolerance. */
      readonly deviation: number;
      /** How many lines of chords became arcs. */
      readonly newArcs: number;
    }
  | ReturnType<typeof notChanged>;

/** How often the tolerance is halved where the simpler outline would touch itself. */
const HALVINGS = 6;

/**
 * An outline with fewer vertices that strays by no more than a tolerance: lines of chords that lie on a circle become one
 * arc each (at most a half circle), other vertices between straight edges are left out where they can be, and arcs stay
 * as they are.
 *
 * @param vertices of a sound outline.
 * @param tolerance nanometres, more than 0. Where so much would make the outline touch itself, half of it is tried, and
 *   so on.
 * @param arcs whether chords may become arcs.
 * @source lines: geom/simplify (Douglas & Peucker). Arcs: our own, by the angle under which a chord is seen from its
 *   circle (Euclid, Elements III.20).
 * @check tests/unit/profile/simplify-drawn.test.ts, tests/laws/outline-operations.test.ts
 */
export function simplifyDrawn(vertices: readonly Vertex[], tolerance: number, arcs = true): Simplified {
  if (!(tolerance > 0)) return notChanged('The tolerance must be more than 0', 'Give how far the outline may stray.');
  for (let halvings = 0; halvings <= HALVINGS; halvings++) {
    const simpler = simplifyWithin(vertices, tolerance / 2 ** halvings, arcs);
    if (makeDrawn(simpler.vertices).ok) return { ok: true, ...simpler };
  }
  return notChanged('With fewer vertices the outline would touch itself', 'Give a smaller tolerance.');
}

/** A part of an outline, its last vertex left to the next part. */
interface Part {
  readonly vertices: Vertex[];
  readonly deviation: number;
  readonly newArcs: number;
}

function simplifyWithin(vertices: readonly Vertex[], tolerance: number, arcs: boolean): Part {
  const parts = straightStretches(vertices).map((stretch) =>
    stretch.length === 2 && stretch[0].bulge
      ? { vertices: [stretch[0]], deviation: 0, newArcs: 0 }
      : simplifyStretch(stretch, tolerance, arcs),
  );
  return {
    vertices: parts.flatMap((part) => part.vertices),
    deviation: Math.max(...parts.map((part) => part.deviation)),
    newArcs: parts.reduce((sum, part) => sum + part.newArcs, 0),
  };
}

/** The outline in stretches, each ending where the next begins: every arc by itself, straight edges in a row together. */
function straightStretches(vertices: readonly Vertex[]): Vertex[][] {
  const firstArc = vertices.findIndex(({ bulge }) => bulge);
  if (firstArc < 0) return [openedAtCorner(vertices)];
  const closed = [...vertices.slice(firstArc), ...vertices.slice(0, firstArc + 1)];
  const stretches: Vertex[][] = [];
  for (const [i, vertex] of closed.slice(0, -1).entries()) {
    const last = stretches.at(-1);
    if (!last || vertex.bulge || closed[i - 1]?.bulge) stretches.push([vertex, closed[i + 1]]);
    else last.push(closed[i + 1]);
  }
  return stretches;
}

/** A stretch of straight edges with arcs for chords and fewer vertices between them. */
function simplifyStretch(points: readonly Point[], tolerance: number, arcs: boolean): Part {
  const vertices: Vertex[] = [];
  const found = arcs ? findArcs(points, tolerance) : [];
  let deviation = 0;
  let at = 0;
  const straightTo = (to: number) => {
    const simpler = simplifyPath(points.slice(at, to + 1), tolerance);
    deviation = Math.max(deviation, strayOf(points.slice(at, to + 1), simpler));
    vertices.push(...simpler.slice(0, -1).map(({ x, y }) => ({ x, y })));
  };
  for (const { from, to, bulge, off } of found) {
    straightTo(from);
    vertices.push(vertexAt(points[from].x, points[from].y, bulge));
    deviation = Math.max(deviation, off);
    at = to;
  }
  straightTo(points.length - 1);
  return { vertices, deviation, newArcs: found.length };
}

/** How far a line is from one with some of its points left out; no point of either is further from the other. */
function strayOf(points: readonly Point[], simpler: readonly Point[]): number {
  let worst = 0;
  let k = 0;
  for (const p of points) {
    if (p === simpler[k + 1] && k + 2 < simpler.length) k++;
    const [a, b] = [simpler[k], simpler[Math.min(k + 1, simpler.length - 1)]];
    worst = Math.max(worst, squaredDistance(p.x, p.y, a.x, a.y, b.x, b.y));
  }
  return Math.sqrt(worst);
}
