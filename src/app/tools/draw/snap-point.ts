import type { Point } from '../../../geom/point.ts';
import { partOfEdge, pointOnEdge } from '../../../geom/point-on-edge.ts';
import type { Vertex } from '../../../geom/vertex.ts';

/** A place that the hand may be drawn to, and what it is called: "vertex 4", "Heron blank". */
export interface NamedPoint {
  readonly at: Point;
  readonly name: string;
}

/** An edge that the hand may be drawn to. */
export interface NamedEdge {
  readonly from: Vertex;
  readonly to: Point;
  readonly name: string;
}

/** What the hand may be drawn to. */
export interface SnapTargets {
  readonly vertices: readonly NamedPoint[];
  readonly edges: readonly NamedEdge[];
  /** Places that it may stand level with or over: neighbours, and where it was. */
  readonly axes: readonly NamedPoint[];
  /** Nanometres from line to line of the grid; null without one. */
  readonly step: number | null;
  /** The finest step of a place that nothing draws, nanometres. */
  readonly finest: number;
}

/** A place as it is taken, and to what it was drawn. */
export interface Snapped {
  /** Whole nanometres. */
  readonly point: Point;
  readonly kind: 'vertex' | 'edge' | 'axis' | 'grid' | 'free';
  /** To what, in few words; empty where it is free. */
  readonly word: string;
  /** Lines to places that it stands level with or over. */
  readonly guides: readonly (readonly [Point, Point])[];
}

/** How near the hand must be to be drawn, in pixels. */
const SNAP_PX = { vertex: 10, edge: 8, axis: 6 } as const;

/** A vertex that is hardly further than the grid draws before it: so much further, in pixels. */
const BEFORE_GRID_PX = 1.5;

/**
 * Where a hand that points at `place` is taken to: to a vertex in reach; else level with or over another place, or onto an
 * edge; the coordinates left open go to the grid. The grid has no reach of its own, but what is nearer wins: a vertex
 * that is clearly further than a place of the grid does not draw, nor a level that is further than the grid's next line,
 * or each would hide the places of a fine grid round it.
 *
 * @param scale pixels a nanometre.
 * @param hold the place from which only a horizontal or vertical way is wanted; null for any way.
 * @check tests/unit/app/draw-snapping.test.ts
 */
export function snapPoint(place: Point, targets: SnapTargets, scale: number, hold: Point | null = null): Snapped {
  if (hold) return alongAxis(place, targets, scale, hold);
  const vertex = nearest(targets.vertices, place, vertexReach(place, targets, scale));
  if (vertex) return { point: whole(vertex.at), kind: 'vertex', word: `on ${vertex.name}`, guides: [] };
  const level = nearestOn(targets.axes, 'y', place, axisReach(targets, scale));
  const over = nearestOn(targets.axes, 'x', place, axisReach(targets, scale));
  if (level && over) return aligned({ x: over.at.x, y: level.at.y }, [level, over]);
  const edge = edgeInReach(targets.edges, place, SNAP_PX.edge / scale);
  if (edge) return { point: whole(edge.at), kind: 'edge', word: `on an edge of ${edge.name}`, guides: [] };
  if (level) return aligned({ x: onGrid(place.x, targets), y: level.at.y }, [level, null]);
  if (over) return aligned({ x: over.at.x, y: onGrid(place.y, targets) }, [null, over]);
  return gridPoint(place, targets);
}

/** How near a vertex must be to draw a hand at `place`, nanometres. */
function vertexReach(place: Point, targets: SnapTargets, scale: number): number {
  if (!targets.step) return SNAP_PX.vertex / scale;
  const toGrid = Math.hypot(onGrid(place.x, targets) - place.x, onGrid(place.y, targets) - place.y);
  return Math.min(SNAP_PX.vertex / scale, toGrid + BEFORE_GRID_PX / scale);
}

/** How near a level must be, nanometres: it holds no further than half way to the grid's next line. */
function axisReach({ step }: SnapTargets, scale: number): number {
  return Math.min(SNAP_PX.axis / scale, (step ?? Infinity) / 2);
}

/** Where a place is taken to that nothing but the grid may draw. */
export function gridPoint(place: Point, targets: Pick<SnapTargets, 'step' | 'finest'>): Snapped {
  const point = { x: onGrid(place.x, targets), y: onGrid(place.y, targets) };
  return { point, kind: targets.step ? 'grid' : 'free', word: targets.step ? 'on the grid' : '', guides: [] };
}

/** The way from `hold` that is nearer to the hand, horizontal or vertical, as far as a vertex or the grid says. */
function alongAxis(place: Point, targets: SnapTargets, scale: number, hold: Point): Snapped {
  const across = Math.abs(place.x - hold.x) >= Math.abs(place.y - hold.y);
  const axis = across ? 'x' : 'y';
  const word = across ? 'horizontal' : 'vertical';
  const by = nearestOn([...targets.vertices, ...targets.axes], axis, place, axisReach(targets, scale));
  const far = by ? by.at[axis] : onGrid(place[axis], targets);
  const point = whole(across ? { x: far, y: hold.y } : { x: hold.x, y: far });
  const guides: [Point, Point][] = [[hold, point], ...(by ? [[by.at, point] as [Point, Point]] : [])];
  return { point, kind: 'axis', word: by ? `${word}, at ${by.name}` : word, guides };
}

function aligned(at: Point, [level, over]: readonly [NamedPoint | null, NamedPoint | null]): Snapped {
  const point = whole(at);
  const words = [level && `level with ${level.name}`, over && `plumb with ${over.name}`];
  const guides = [level, over].flatMap((by) => (by ? [[by.at, point] as const] : []));
  return { point, kind: 'axis', word: words.filter(Boolean).join(', '), guides };
}

function nearest(points: readonly NamedPoint[], place: Point, reach: number): NamedPoint | null {
  let best: NamedPoint | null = null;
  let least = reach;
  for (const point of points) {
    const far = Math.hypot(point.at.x - place.x, point.at.y - place.y);
    if (far < least) [best, least] = [point, far];
  }
  return best;
}

/** The place that is nearest in one coordinate; of equally near ones that which is nearer altogether. */
function nearestOn(points: readonly NamedPoint[], axis: keyof Point, place: Point, reach: number): NamedPoint | null {
  let best: NamedPoint | null = null;
  let least = reach;
  let near = Infinity;
  for (const point of points) {
    const far = Math.abs(point.at[axis] - place[axis]);
    const whole = Math.hypot(point.at.x - place.x, point.at.y - place.y);
    if (far < least - 1 || (far <= least && best && far <= least + 1 && whole < near))
      [best, least, near] = [point, far, whole];
  }
  return best;
}

function edgeInReach(edges: readonly NamedEdge[], place: Point, reach: number): NamedPoint | null {
  const feet = edges.map(({ from, to, name }) => ({ at: pointOnEdge(from, to, partOfEdge(from, to, place)), name }));
  return nearest(feet, place, reach);
}

function onGrid(value: number, { step, finest }: Pick<SnapTargets, 'step' | 'finest'>): number {
  const pitch = step ?? finest;
  return Math.round(Math.round(value / pitch) * pitch) + 0;
}

function whole({ x, y }: Point): Point {
  return { x: Math.round(x) + 0, y: Math.round(y) + 0 };
}
