import type { Point } from '../../../src/geom/point.ts';
import type { OpeningShape } from '../../cases/fit-case.ts';

/*
 * Containment straight from the definition, exact, touching allowed: no edge of the blank crosses the opening's
 * outline; every edge is cut where the outline touches it, and the middle of every piece must lie in the closed
 * opening; and no island may lie inside the blank. Slow and simple on purpose. Middles are kept as doubled whole
 * numbers; a sign is taken from doubles where they are certain and from big integers where they are not.
 */

/** Whether the blank moved by `by` (whole nanometres) lies inside the opening, touching allowed. Exact. */
export function liesInside(opening: OpeningShape, blank: readonly Point[], by: Point): boolean {
  const moved = blank.map((p) => ({ x: p.x + by.x, y: p.y + by.y }));
  const outlines = [opening.outer, ...opening.islands].map(edgesOf);
  const walls = outlines.flat();
  const edges = edgesOf(moved);
  if (edges.some((edge) => walls.some((wall) => crossesProperly(edge, wall)))) return false;
  if (edges.some((edge) => !edgeInside(edge, walls, outlines))) return false;
  return outlines.slice(1).every((island) => !islandInside(island, edges));
}

type Edge = readonly [Point, Point];
type Place = 'inside' | 'on' | 'outside';

function edgesOf(outline: readonly Point[]): Edge[] {
  return outline
    .map((p, i) => [p, outline[(i + 1) % outline.length]] as const)
    .filter(([p, q]) => p.x !== q.x || p.y !== q.y);
}

/** Every piece of the edge between two vertices of the walls has its middle in the opening. */
function edgeInside(edge: Edge, walls: readonly Edge[], outlines: readonly (readonly Edge[])[]): boolean {
  const [a, b] = edge;
  const along = (p: Point): number => (p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y);
  const cuts = walls.map(([p]) => p).filter((p) => turn(a, b, doubled(p)) === 0 && along(p) > 0 && along(p) < along(b));
  const stops = [a, ...cuts.sort((p, q) => along(p) - along(q)), b];
  return stops.slice(1).every((stop, i) => inClosedOpening(doubledMiddle(stops[i], stop), outlines));
}

/** The island's area lies in the blank, whose outline is known not to enter the island. */
function islandInside(island: readonly Edge[], blank: readonly Edge[]): boolean {
  const places = island.map(([p, q]) => placeIn(doubledMiddle(p, q), blank));
  return places.includes('inside') || !places.includes('outside');
}

function inClosedOpening(p: Point, [outer, ...islands]: readonly (readonly Edge[])[]): boolean {
  return placeIn(p, outer) !== 'outside' && islands.every((island) => placeIn(p, island) !== 'inside');
}

/** Counts crossings of the ray to the right of the doubled point; a vertex at its height belongs to the edge below. */
function placeIn(p: Point, outline: readonly Edge[]): Place {
  let inside = false;
  for (const [a, b] of outline) {
    const [aBelow, bBelow] = [2 * a.y <= p.y, 2 * b.y <= p.y];
    if (aBelow === bBelow && 2 * a.y !== p.y && 2 * b.y !== p.y) continue;
    const side = turn(a, b, p);
    if (side === 0 && within(p, a, b)) return 'on';
    if (aBelow !== bBelow && side > 0 === aBelow) inside = !inside;
  }
  return inside ? 'inside' : 'outside';
}

function within(p: Point, a: Point, b: Point): boolean {
  const spans = (v: number, c: number, d: number): boolean => 2 * Math.min(c, d) <= v && v <= 2 * Math.max(c, d);
  return spans(p.x, a.x, b.x) && spans(p.y, a.y, b.y);
}

function crossesProperly([a, b]: Edge, [c, d]: Edge): boolean {
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) return false;
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false;
  return turn(a, b, doubled(c)) * turn(a, b, doubled(d)) < 0 && turn(c, d, doubled(a)) * turn(c, d, doubled(b)) < 0;
}

function doubled(p: Point): Point {
  return { x: 2 * p.x, y: 2 * p.y };
}

function doubledMiddle(p: Point, q: Point): Point {
  return { x: p.x + q.x, y: p.y + q.y };
}

/** The sign of the turn from a over b to the point given doubled: 1 left, -1 right, 0 straight. Exact. */
function turn(a: Point, b: Point, p: Point): number {
  const [dx, dy, px, py] = [b.x - a.x, b.y - a.y, p.x - 2 * a.x, p.y - 2 * a.y];
  const [left, right] = [dx * py, dy * px];
  const difference = left - right;
  if (Math.abs(difference) > 1e-15 * (Math.abs(left) + Math.abs(right))) return Math.sign(difference);
  const exact = BigInt(dx) * BigInt(py) - BigInt(dy) * BigInt(px);
  return Number(exact > 0n) - Number(exact < 0n);
}
