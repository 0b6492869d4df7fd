import type { Point } from './point.ts';
import { crossingPoint, meetingOf, turn } from './predicates.ts';
import { edgePoints, type Vertex } from './vertex.ts';

/** Most places that are told; a scribble has more than anyone looks at. */
const MOST_PLACES = 64;

/** Places nearer to each other than this, in nanometres, are told as one. */
const SAME_PLACE = 2_000;

/**
 * Every place where an outline, or a line that is still being drawn, crosses or touches itself: all of them, so that a
 * hand that drags sees where it went wrong. A stretch that runs back along another gives its ends.
 *
 * @param vertices in order, arcs as bulges, nanometres.
 * @param closed false for a line whose last vertex is not joined to its first.
 * @returns at most 64 places, nanometres, the ones further left first; empty where the line is simple.
 * @accuracy places on arcs are those of their chords.
 * @check tests/unit/geom/find-crossings.test.ts
 */
export function findCrossings(vertices: readonly Vertex[], closed = true): Point[] {
  const edges = chordsOf(vertices, closed);
  const order = edges.map((_, i) => i).sort((i, j) => edges[i].left - edges[j].left);
  const places: Point[] = [];
  let open: number[] = [];
  for (const i of order) {
    open = open.filter((j) => edges[j].right >= edges[i].left);
    for (const j of open) {
      for (const place of meetingPlaces(edges, i, j, closed)) if (!isKnown(places, place)) places.push(place);
      if (places.length >= MOST_PLACES) return places.slice(0, MOST_PLACES);
    }
    open.push(i);
  }
  return places;
}

interface Chord {
  readonly from: Point;
  readonly to: Point;
  readonly left: number;
  readonly right: number;
}

function chordsOf(vertices: readonly Vertex[], closed: boolean): Chord[] {
  const whole = vertices.map((v) => ({ ...v, x: Math.round(v.x), y: Math.round(v.y) }));
  const count = closed ? whole.length : whole.length - 1;
  const points: Point[] = [];
  for (let i = 0; i < count; i++) points.push(...edgePoints(whole[i], whole[(i + 1) % whole.length]));
  if (!closed && whole.length > 0) points.push(whole[whole.length - 1]);
  const kept = points.filter(({ x, y }, i) => i === 0 || x !== points[i - 1].x || y !== points[i - 1].y);
  const ends = closed ? [...kept, kept[0]] : kept;
  return ends.slice(1).flatMap((to, i) => {
    const from = ends[i];
    if (from.x === to.x && from.y === to.y) return [];
    return [{ from, to, left: Math.min(from.x, to.x), right: Math.max(from.x, to.x) }];
  });
}

function meetingPlaces(edges: readonly Chord[], i: number, j: number, closed: boolean): Point[] {
  const [first, second] = i < j ? [i, j] : [j, i];
  const { from: a, to: b } = edges[first];
  const { from: c, to: d } = edges[second];
  const meeting = meetingOf(a, b, c, d);
  const neighbours = second === first + 1 || (closed && first === 0 && second === edges.length - 1);
  if (meeting === 'apart' || (neighbours && meeting === 'touching')) return [];
  if (meeting === 'crossing') return [crossingPoint(a, b, c, d)];
  const onOther = [c, d].filter((p) => liesOn(p, a, b));
  return meeting === 'overlapping' || onOther.length === 0
    ? [...onOther, ...[a, b].filter((p) => liesOn(p, c, d))]
    : onOther;
}

/** Whether a point in whole nanometres lies on a segment. */
function liesOn(p: Point, a: Point, b: Point): boolean {
  if (turn(a, b, p) !== 0) return false;
  const across = Math.abs(b.x - a.x) >= Math.abs(b.y - a.y) ? 'x' : 'y';
  return p[across] >= Math.min(a[across], b[across]) && p[across] <= Math.max(a[across], b[across]);
}

function isKnown(places: readonly Point[], { x, y }: Point): boolean {
  return places.some((p) => Math.abs(p.x - x) < SAME_PLACE && Math.abs(p.y - y) < SAME_PLACE);
}
