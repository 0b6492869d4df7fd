import { type Box, boxOf } from '../geom/point.ts';
import { isRing, type Ring } from '../geom/ring.ts';
import { cornersOf, type EdgeIndex, edgesOf, indexEdges } from './edge-index.ts';

/** A blank or tool made ready to be tried in many openings. Coordinates in nanometres. */
export interface Blank {
  /** Its outline; several where wear or tolerance has cut a blade in parts, which then move together. */
  readonly rings: readonly Ring[];
  readonly box: Box;
  /** Edges as x0, y0, x1, y1, the longest first: long edges forbid most, so that a blocked pair ends early. */
  readonly edges: Float64Array;
  readonly index: EdgeIndex;
  /** Corners that stick out, as {@link cornersOf} lists them: only these can be the first to touch. */
  readonly convex: Float64Array;
}

/** Makes a blank ready; about 0.02 ms for 60 vertices. */
export function prepareBlank(source: Ring | readonly Ring[]): Blank {
  const rings = isRing(source) ? [source] : source;
  const edges = rings.flatMap(edgesOf);
  edges.sort((a, b) => lengthOf(b) - lengthOf(a));
  return {
    rings,
    box: boxOf(rings.flat()),
    edges: Float64Array.from(edges.flat()),
    index: indexEdges(rings),
    convex: cornersOf(rings, 1),
  };
}

function lengthOf([x0, y0, x1, y1]: number[]): number {
  return Math.hypot(x1 - x0, y1 - y0);
}
