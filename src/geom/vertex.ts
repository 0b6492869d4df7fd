import type { OutlineFault } from './check-outline.ts';
import type { Point } from './point.ts';
import { makeRing, type Ring } from './ring.ts';
import { signedArea } from './signed-area.ts';
import { lightenOutline } from './simplify.ts';

/**
 * A vertex of an outline as it is drawn, in nanometres, and the shape of the edge that leaves it. `bulge` is the tangent
 * of a quarter of the arc's angle: 0 or absent a straight edge, 1 a half circle; positive where the edge turns to the
 * left on its way, so that it bows out of an outline that runs counter-clockwise.
 *
 * @source the bulge of a polyline vertex in the DXF format (group code 42), used by drawing programs in general.
 */
export interface Vertex extends Point {
  readonly bulge?: number;
}

/** Greatest distance, in nanometres, between a bulged edge and the chords that stand for it: half a micrometre. */
export const ARC_CHORD_ERROR = 500;

/** Greatest bulge: an arc of 358 degrees. */
export const MAX_BULGE = 100;

/** Most chords of one arc; only arcs far larger than any section come near. */
const MOST_CHORDS = 4_096;

/** An outline as drawn and as the core sees it, or the first reason why it is not a simple polygon. */
export type DrawnResult =
  | { readonly ok: true; readonly drawn: readonly Vertex[]; readonly ring: Ring }
  | { readonly ok: false; readonly fault: OutlineFault };

/**
 * Makes an outline of drawn vertices: whole nanometres, no vertex twice in a row, counter-clockwise (a clockwise one is
 * turned round, the first vertex stays first), arcs as chords. Of two vertices with arcs the arcs are halved, so that an
 * outline always has three. What needs too many corners to be judged is no outline either.
 *
 * @param vertices in order, either way round, without a closing repeat (one is dropped), nanometres.
 * @returns `drawn`, the vertices as taken, and `ring`, their simple polygon; or the first fault, its `vertices` being
 *   numbers in the list that was given.
 * @accuracy ring vertices lie on the arcs to 0.71 nm, chords within {@link ARC_CHORD_ERROR} of them, towards the centre.
 * @check tests/unit/geom/vertex.test.ts
 */
export function makeDrawn(vertices: readonly Vertex[]): DrawnResult {
  const kept = atLeastThree(dropRepeats(vertices));
  const points: Point[] = [];
  const owners: number[] = [];
  for (const [k, { vertex, index }] of kept.entries()) {
    for (const point of edgePoints(vertex, kept[(k + 1) % kept.length].vertex)) {
      const last = points.at(-1);
      if (last && last.x === point.x && last.y === point.y) continue;
      points.push(point);
      owners.push(index);
    }
  }
  const made = makeRing(points);
  if (!made.ok) return { ok: false, fault: renumber(made.fault, owners) };
  if (isJagged(made.ring)) return { ok: false, fault: TOO_JAGGED };
  const drawn = kept.map(({ vertex }) => vertex);
  return { ok: true, drawn: signedArea(points) > 0 ? drawn : turnedRound(drawn), ring: made.ring };
}

/** Two outlines that need more corners than this cannot be judged against each other in reasonable time. */
const MOST_CORNERS = 1_000;

const TOO_JAGGED: OutlineFault = {
  kind: 'too-jagged',
  message: `has more than ${MOST_CORNERS} corners that stand out by over 0.001 mm, too many to judge a fit`,
  vertices: [],
};

/** Whether an outline needs very many corners: even moved by a thousandth of a millimetre it cannot do with fewer. */
function isJagged(ring: Ring): boolean {
  return lightenOutline(ring, MOST_CORNERS).points.length > MOST_CORNERS;
}

/** A fault of the chords told by the numbers of the drawn vertices; chord ends inside an arc belong to its edge. */
function renumber(fault: OutlineFault, owners: readonly number[]): OutlineFault {
  const isVertex = (i: number) => owners[i] !== owners[i - 1];
  const message = fault.message.replace(/\b(vertex|edge) (\d+)/g, (_, kind: string, digits: string) => {
    const i = Number(digits);
    return `${kind === 'vertex' && isVertex(i) ? 'vertex' : 'edge'} ${owners[i] ?? i}`;
  });
  return { ...fault, message, vertices: fault.vertices.map((i) => owners[i] ?? i) };
}

/** The same outline run the other way; the first vertex stays first, each bulge goes with its edge and changes its sign. */
export function turnedRound(vertices: readonly Vertex[]): Vertex[] {
  const n = vertices.length;
  return vertices.map((_, i) => {
    const { x, y } = vertices[(n - i) % n];
    return vertexAt(x, y, -(vertices[n - 1 - i].bulge ?? 0));
  });
}

/** A vertex that has a `bulge` only where its edge has one. */
export function vertexAt(x: number, y: number, bulge = 0): Vertex {
  return bulge === 0 ? { x, y } : { x, y, bulge };
}

/** The circle of a bulged edge; angles in radians, the arc running from `start` by `sweep` (positive to the left). */
export interface EdgeArc {
  readonly centre: Point;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

/** An arc that stands off its chord by less than this, in nanometres, is straight. */
const LEAST_BOW = 0.5;

/** The arc of an edge, or null where it is straight or has no length. Fractions of nanometres. */
export function arcOf(from: Vertex, to: Point): EdgeArc | null {
  const bulge = from.bulge ?? 0;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  if (Math.abs(bulge) * Math.hypot(dx, dy) < 2 * LEAST_BOW) return null;
  // The centre stands off the chord's middle, to the left, by (1 - b^2) / 4b of the chord.
  const off = (1 - bulge * bulge) / (4 * bulge);
  const centre = { x: (from.x + to.x) / 2 - dy * off, y: (from.y + to.y) / 2 + dx * off };
  const radius = (Math.hypot(dx, dy) * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
  return { centre, radius, start: Math.atan2(from.y - centre.y, from.x - centre.x), sweep: 4 * Math.atan(bulge) };
}

/** Points along an edge from its first vertex on, its end not included; whole nanometres. */
export function edgePoints(from: Vertex, to: Point, chordError = ARC_CHORD_ERROR): Point[] {
  const first = { x: from.x, y: from.y };
  const arc = arcOf(from, to);
  if (!arc) return [first];
  const step = 2 * Math.acos(Math.max(-1, 1 - chordError / arc.radius));
  const count = Math.min(MOST_CHORDS, Math.max(1, Math.ceil(Math.abs(arc.sweep) / step - 1e-9)));
  const inner = Array.from({ length: count - 1 }, (_, k) => {
    const angle = arc.start + (arc.sweep * (k + 1)) / count;
    return {
      x: Math.round(arc.centre.x + arc.radius * Math.cos(angle)) + 0,
      y: Math.round(arc.centre.y + arc.radius * Math.sin(angle)) + 0,
    };
  });
  return [first, ...inner];
}

/** A vertex with its number in the list that was given. */
interface NumberedVertex {
  readonly vertex: Vertex;
  readonly index: number;
}

/** Halves the arcs of an outline of two vertices, such as a circle; any other is left as it is. */
function atLeastThree(kept: readonly NumberedVertex[]): readonly NumberedVertex[] {
  if (kept.length !== 2) return kept;
  return kept.flatMap((from, i) => {
    const { vertex, index } = from;
    const arc = arcOf(vertex, kept[1 - i].vertex);
    if (!arc) return [from];
    const half = Math.tan(Math.atan(vertex.bulge ?? 0) / 2);
    const angle = arc.start + arc.sweep / 2;
    const x = Math.round(arc.centre.x + arc.radius * Math.cos(angle)) + 0;
    const y = Math.round(arc.centre.y + arc.radius * Math.sin(angle)) + 0;
    return [
      { vertex: vertexAt(vertex.x, vertex.y, half), index },
      { vertex: vertexAt(x, y, half), index },
    ];
  });
}

/** Whole nanometres, consecutive equal vertices reduced to the last of them (whose edge goes on), each with its number. */
function dropRepeats(vertices: readonly Vertex[]): NumberedVertex[] {
  const whole = vertices.map(({ x, y, bulge }, index) => ({
    vertex: vertexAt(Math.round(x) + 0, Math.round(y) + 0, bulge),
    index,
  }));
  const kept = whole.filter(({ vertex }, i) => i === whole.length - 1 || !same(vertex, whole[i + 1].vertex));
  while (kept.length > 1 && same(kept[0].vertex, kept[kept.length - 1].vertex)) kept.pop();
  return kept;
}

function same(a: Point, b: Point): boolean {
  return a.x === b.x && a.y === b.y;
}
