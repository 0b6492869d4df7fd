import type { Point } from '../../geom/point.ts';
import { type Vertex, vertexAt } from '../../geom/vertex.ts';

/** A line of a drawing in nanometres, before and after it is joined with others. */
export interface Chain {
  readonly vertices: readonly Vertex[];
  readonly closed: boolean;
  readonly label: string;
  /** Number of the line in the file on which its first piece begins. */
  readonly line: number;
  /** Whether the drawing gives its first and last point itself; else they are reckoned, as the ends of an arc are. */
  readonly firm: readonly [start: boolean, end: boolean];
}

/** The same chain run the other way. */
export function reverseChain(chain: Chain): Chain {
  const { vertices, firm } = chain;
  const n = vertices.length;
  const turned = vertices.map((_, i) => {
    const { x, y } = vertices[n - 1 - i];
    return vertexAt(x, y, i < n - 1 ? -(vertices[n - 2 - i].bulge ?? 0) : 0);
  });
  return { ...chain, vertices: turned, firm: [firm[1], firm[0]] };
}

/** The first or last point of a chain. */
export function endOf({ vertices }: Chain, end: 0 | 1): Point {
  return vertices[end === 0 ? 0 : vertices.length - 1];
}

/** Where two ends meet: the one that the drawing gives, or midway. */
function meetingPoint(a: Point, aFirm: boolean, b: Point, bFirm: boolean): Point {
  if (aFirm && !bFirm) return a;
  if (bFirm && !aFirm) return b;
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** Two chains as one: the end of `a` is joined to the start of `b`, both moved to where they meet. */
export function appendChain(a: Chain, b: Chain): Chain {
  const meet = meetingPoint(endOf(a, 1), a.firm[1], endOf(b, 0), b.firm[0]);
  const [first, ...rest] = b.vertices;
  const vertices = [...a.vertices.slice(0, -1), vertexAt(meet.x, meet.y, first.bulge), ...rest];
  return { ...a, vertices, label: a.label || b.label, firm: [a.firm[0], b.firm[1]] };
}

/** An open chain closed: its last point is dropped, its first moved to where both meet. */
export function closeChain(chain: Chain): Chain {
  const { vertices, firm } = chain;
  const meet = meetingPoint(endOf(chain, 0), firm[0], endOf(chain, 1), firm[1]);
  const [first, ...rest] = vertices.slice(0, -1);
  return { ...chain, vertices: [vertexAt(meet.x, meet.y, first.bulge), ...rest], closed: true };
}
