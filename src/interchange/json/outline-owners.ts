import { edgePoints, type Vertex } from '../../geom/vertex.ts';

/** The drawn vertex that a corner of a ring stems from: the vertex itself, or the one whose arc the corner lies on. */
export interface CornerOwner {
  readonly vertex: number;
  readonly isVertex: boolean;
}

/**
 * For every corner of the ring made of an outline with arcs, where it stems from; null where there is no arc, since
 * then corner n is vertex n.
 *
 * @check tests/unit/cli/outline-numbers.test.ts
 */
export function outlineOwners(drawn: readonly Vertex[]): CornerOwner[] | null {
  if (!drawn.some(({ bulge }) => bulge)) return null;
  return drawn.flatMap((vertex, i) =>
    edgePoints(vertex, drawn[(i + 1) % drawn.length]).map((_, k) => ({ vertex: i, isVertex: k === 0 })),
  );
}
