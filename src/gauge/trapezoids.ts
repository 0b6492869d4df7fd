import type { Point } from '../geom/point.ts';

/**
 * A part of an opening between two heights, bounded left and right by one edge each. Nanometres; the left side runs from
 * (left0, low) to (left1, high), the right one from (right0, low) to (right1, high).
 */
export interface Trapezoid {
  readonly low: number;
  readonly high: number;
  readonly left0: number;
  readonly left1: number;
  readonly right0: number;
  readonly right1: number;
  /** The parts that stand on this one: their shared stretch has a length. */
  readonly above: Trapezoid[];
}

/** An edge that is not level, from its lower end up. */
interface RisingEdge {
  readonly low: Point;
  readonly high: Point;
}

/**
 * Cuts an opening into trapezoids by level lines through all its vertices.
 *
 * What is bounded by one ring has no islands, so that from one part to another there is at most one way up.
 *
 * @param points a simple polygon, either way round; fractions of nanometres allowed.
 * @returns the trapezoids, the lowest first.
 * @accuracy exact but for the rounding of doubles, below 1e-6 nm.
 * @check tests/unit/gauge/trapezoids.test.ts
 */
export function trapezoidsOf(points: readonly Point[]): Trapezoid[] {
  const levels = [...new Set(points.map((p) => p.y))].sort((a, b) => a - b);
  const edges = risingEdges(points);
  const all: Trapezoid[] = [];
  let below: Trapezoid[] = [];
  for (let i = 0; i + 1 < levels.length; i++) {
    const row = rowOf(edges, levels[i], levels[i + 1]);
    for (const part of below) for (const next of row) if (meets(part, next)) part.above.push(next);
    all.push(...row);
    below = row;
  }
  return all;
}

function risingEdges(points: readonly Point[]): RisingEdge[] {
  return points.flatMap((p, i) => {
    const q = points[(i + 1) % points.length];
    if (p.y === q.y) return [];
    return [p.y < q.y ? { low: p, high: q } : { low: q, high: p }];
  });
}

/** The parts between two neighbouring levels, from left to right. */
function rowOf(edges: readonly RisingEdge[], low: number, high: number): Trapezoid[] {
  const sides: { x0: number; x1: number }[] = [];
  for (const edge of edges)
    if (edge.low.y <= low && edge.high.y >= high) sides.push({ x0: edgeAt(edge, low), x1: edgeAt(edge, high) });
  if (sides.length > 1) sides.sort((a, b) => a.x0 + a.x1 - b.x0 - b.x1);
  const row: Trapezoid[] = [];
  for (let i = 0; i + 1 < sides.length; i += 2) {
    const [left, right] = [sides[i], sides[i + 1]];
    row.push({ low, high, left0: left.x0, left1: left.x1, right0: right.x0, right1: right.x1, above: [] });
  }
  return row;
}

function edgeAt({ low, high }: RisingEdge, y: number): number {
  if (y === low.y) return low.x;
  if (y === high.y) return high.x;
  return low.x + ((high.x - low.x) * (y - low.y)) / (high.y - low.y);
}

function meets(below: Trapezoid, above: Trapezoid): boolean {
  return Math.min(below.right1, above.right0) > Math.max(below.left1, above.left0);
}

/** Where a trapezoid's left side stands at a height. */
export function leftAt({ low, high, left0, left1 }: Trapezoid, y: number): number {
  return along(low, high, left0, left1, y);
}

/** Where a trapezoid's right side stands at a height. */
export function rightAt({ low, high, right0, right1 }: Trapezoid, y: number): number {
  return along(low, high, right0, right1, y);
}

function along(low: number, high: number, x0: number, x1: number, y: number): number {
  if (x0 === x1 || y <= low) return x0;
  return y >= high ? x1 : x0 + ((x1 - x0) * (y - low)) / (high - low);
}
